import { expect, test } from 'vitest';
import { differencesSentence, differingCells, differingEntries, differsBy } from '../../../src/present/plans/differing';
import { textOf } from '../../../src/present/text/phrase';
import { text } from '../nursery';
import { allPlans } from './given';

const all = allPlans(text);

test('what two plans are given differently, with both values; not what follows from it', () => {
  expect(differingEntries({ ...all, plans: [0, 1] }).map(({ name, values }) => [name, values])).toEqual([
    ['Nursery boards', ['0', '130']],
    ['Heads a year', ['180,000', '230,000']],
  ]);
  expect(differingCells(all.model, 1, 1)).toEqual([]);
});

test('numbers are told apart by their value, formulas by their text', () => {
  const lines = ['name,label,formula,plan: A,plan: B', ',A case,,,', 'a,A,,1.0,1', 'b,B,,a + 1,1 + a', 'c,C,a,,', ''];
  const { model, ...rest } = allPlans(lines.join('\n'));
  const found = differingEntries({ ...rest, model, plans: [0, 1] });
  expect(found.map(({ name, isAlike }) => [name, isAlike])).toEqual([['B', true]]);
});

test('how much differs is said in words', () => {
  expect([0, 1, 7].map(differsBy)).toEqual([
    'the same as the reference',
    'differs in one entry',
    'differs in 7 entries',
  ]);
  const said = (count: number, isReference = false): string =>
    textOf(differencesSentence('Nursery', 'Straight', count, isReference));
  expect(said(2)).toBe(
    'Nursery is given 2 entries otherwise than Straight, the reference; all other differences follow from them.',
  );
  expect(said(1)).toContain('one entry otherwise than Straight, the reference; all other differences follow from it.');
  expect(said(0)).toBe('Nothing differs: Nursery is filled as Straight, the reference, is.');
  expect(said(0, true)).toBe('Nursery is the reference itself. Choose another plan to see how it differs.');
});
