import { expect, test } from 'vitest';
import { problem } from '../../../src/core/problem';
import { faultPlace, faultSummary } from '../../../src/present/page/faultTexts';

test.each([
  [0, 0, ''],
  [1, 0, 'one fault'],
  [0, 2, '2 notices'],
  [2, 1, '2 faults, one notice'],
])('of %d faults and %d notices is said: %s', (faults, notices, said) =>
  expect(faultSummary(faults, notices)).toBe(said),
);

test.each([
  ['an entry by its label, the row beside it', 'Wage', 'formula', 'Go to Wage', ' (row 7, formula)'],
  ['an entry as a whole', 'Wage', '', 'Go to Wage', ' (row 7)'],
  ['a row that is no entry by its number', undefined, 'formula', 'Go to row 7', ' (formula)'],
  ['such a row as a whole', undefined, '', 'Go to row 7', ''],
])('a fault leads to %s', (_claim, entry, column, goTo, more) =>
  expect(faultPlace(problem('some', 'some fault', { row: 7, column }), entry)).toEqual({ goTo, more }),
);
