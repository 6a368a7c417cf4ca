import { expect, test } from 'vitest';
import { faultSummary } from '../../../src/present/page/faultTexts';

test.each([
  [0, 0, 0, ''],
  [1, 0, 0, 'one fault'],
  [0, 2, 0, '2 notices'],
  [2, 1, 0, '2 faults, one notice'],
  [0, 0, 1, 'one number outside its range'],
  [1, 0, 3, 'one fault, 3 numbers outside their ranges'],
])('of %d faults, %d notices and %d numbers outside their range is said: %s', (faults, notices, outside, said) =>
  expect(faultSummary(faults, notices, outside)).toBe(said),
);
