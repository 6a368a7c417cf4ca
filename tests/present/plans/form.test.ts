import { expect, test } from 'vitest';
import { copyName, emptyForm, formFaults, formOf, formText, isUnnamed } from '../../../src/present/plans/form';
import { nursery } from '../nursery';

const { sheet } = nursery().model;
const bare = { columns: ['name', 'formula'], rows: [] };
const copy = { does: 'copy', plan: 'Nursery', name: 'Nursery 2', first: '' } as const;

test.each([
  ['Nursery', ['Nursery'], 'Nursery 2'],
  ['Nursery', ['Nursery', 'Nursery 2'], 'Nursery 3'],
  ['Nursery 2', ['Nursery', 'Nursery 2'], 'Nursery 3'],
  ['2', ['2'], '2 2'],
])('a copy of %s beside %j is proposed as %s', (plan, taken, proposed) => {
  expect(copyName(plan, taken)).toBe(proposed);
});

test('a form begins with a free name for a copy and with the name as it is for a new one', () => {
  const names = ['Straight', 'Nursery'];
  expect(emptyForm('copy', 'Nursery', sheet, names)).toEqual(copy);
  expect(emptyForm('rename', 'Nursery', sheet, names).name).toBe('Nursery');
  expect(emptyForm('copy', 'plan', bare, ['plan'])).toEqual({ does: 'copy', plan: 'plan', name: '', first: '' });
});

test('a name that another plan has, or none, is a fault; the own name is none', () => {
  expect(formFaults(sheet, copy)).toEqual({ name: '', first: '' });
  expect(formFaults(sheet, { ...copy, name: ' Straight ' }).name).toContain('plan named twice: Straight');
  expect(formFaults(sheet, { ...copy, name: ' ' }).name).toBe(
    'plan without a name: blank. Enter one, or press Escape to leave it.',
  );
  expect(formFaults(sheet, { ...copy, does: 'rename', name: 'Nursery' }).name).toBe('');
  expect(formFaults(sheet, { ...copy, does: 'rename', name: 'Straight' }).name).toContain('plan named twice');
});

test('a copy of the only plan of a file without plans names both, apart from one another', () => {
  expect([isUnnamed(bare), isUnnamed(sheet)]).toEqual([true, false]);
  const form = { does: 'copy', plan: 'plan', name: 'Wider', first: 'Today' } as const;
  expect(formFaults(bare, form)).toEqual({ name: '', first: '' });
  expect(formFaults(bare, { ...form, first: '' }).first).toContain('plan without a name');
  expect(formFaults(bare, { ...form, first: 'Wider' }).name).toContain('plan named twice: Wider');
});

test('a form is kept as a text, and any other text is none', () => {
  const named = { ...copy, name: 'A, "B"\n' };
  expect(formOf(formText(named))).toEqual(named);
  for (const text of ['', formText(undefined), '[', '["copy",1,2,3]', '{"does":"copy"}', '["sell","a","b","c"]']) {
    expect(formOf(text)).toBeUndefined();
  }
});
