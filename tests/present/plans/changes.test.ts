import { expect, test } from 'vitest';
import { afterForm, afterMove, afterRemoval, sharedAgain } from '../../../src/present/plans/changes';
import { textOf } from '../../../src/present/text/phrase';
import { nursery } from '../nursery';

const { sheet } = nursery().model;
const plansOf = (columns: readonly string[] = []): string[] => columns.filter((column) => column.startsWith('plan:'));
const said = (changed: { done: Parameters<typeof textOf>[0] } | undefined): string => textOf(changed?.done ?? []);

test('a copy stands behind its plan, with its numbers', () => {
  const changed = afterForm(sheet, { does: 'copy', plan: 'Straight', name: 'Straight 2', first: '' });
  expect(plansOf(changed?.sheet.columns)).toEqual(['plan: Straight', 'plan: Straight 2', 'plan: Nursery']);
  expect(changed?.sheet.rows.find(({ row }) => row === 5)?.fields.get('plan: Straight 2')).toBe('0');
  expect(said(changed)).toBe('Straight 2 is a copy of Straight: the two are compared now.');
});

test('a copy of the only plan of a file without plans gives both their names', () => {
  const bare = { columns: ['name', 'formula'], rows: [] };
  const changed = afterForm(bare, { does: 'copy', plan: 'plan', name: 'Wider ', first: ' Today' });
  expect(changed?.sheet.columns).toEqual(['name', 'formula', 'plan: Today', 'plan: Wider']);
  expect(said(changed)).toBe('Wider is a copy of Today: the two are compared now.');
});

test('a plan gets another name; the same name changes nothing, and one at fault is not taken', () => {
  const form = { does: 'rename', plan: 'Nursery', name: 'With a nursery', first: '' } as const;
  const changed = afterForm(sheet, form);
  expect(plansOf(changed?.sheet.columns)).toEqual(['plan: Straight', 'plan: With a nursery']);
  expect(said(changed)).toBe('Nursery is called With a nursery now.');
  expect(afterForm(sheet, { ...form, name: 'Nursery' })).toBeUndefined();
  expect(afterForm(sheet, { ...form, name: 'Straight' })).toBeUndefined();
  const bare = { columns: ['name', 'formula'], rows: [] };
  expect(said(afterForm(bare, { ...form, plan: 'plan' }))).toBe('The plan is called With a nursery now.');
});

test('a plan moved to the front is the reference; at an end nothing moves', () => {
  const changed = afterMove(sheet, 'Nursery', -1);
  expect(plansOf(changed?.sheet.columns)).toEqual(['plan: Nursery', 'plan: Straight']);
  expect(said(changed)).toBe('Nursery stands one place earlier. Nursery is the reference now.');
  expect(afterMove(sheet, 'Nursery', 1)).toBeUndefined();
});

test('a removed reference hands its part to the next; the last plan stays', () => {
  expect(said(afterRemoval(sheet, 'Nursery'))).toBe('Nursery is removed.');
  const changed = afterRemoval(sheet, 'Straight')!;
  expect(said(changed)).toBe('Straight is removed. Nursery is the reference now.');
  expect(afterRemoval(changed.sheet, 'Nursery')).toBeUndefined();
});

test('what is shared again is said with its plan', () => {
  expect(textOf(sharedAgain('Wage', 'Nursery'))).toBe('Wage is shared again in Nursery.');
});
