import { expect, it } from 'vitest';
import { columnsBeside, fieldColumns, foldedNames } from '../../../src/present/timing/columns';

it.each([
  ['the narrowest phone', 288, 'plants seconds'],
  ['a phone', 358, 'plants seconds rating lost'],
  ['half of a screen', 575, 'plants seconds rating lost'],
  ['a wide table', 900, 'plants seconds rating lost way worker date step note'],
])('columns side by side on %s', (_where, width, names) => {
  expect(
    fieldColumns
      .slice(0, columnsBeside(width))
      .map(({ name }) => name)
      .join(' '),
  ).toBe(names);
});

it('what folds away is listed as a sentence lists it', () =>
  expect(foldedNames(fieldColumns.slice(4))).toBe('Way, worker, date, step, note and why left out'));
