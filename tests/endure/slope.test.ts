import { expect, it } from 'vitest';
import { slope } from './slope';

it('a straight line has its own slope, and a level one none', () => {
  expect(
    slope([
      [0, 1],
      [1, 3],
      [4, 9],
    ]),
  ).toBeCloseTo(2, 12);
  expect(
    slope([
      [0, 5],
      [1, 5],
      [2, 5],
    ]),
  ).toBe(0);
  // By hand: means 1 and 2, (−1)(−2) + 0 + (1)(1) over 2.
  expect(
    slope([
      [0, 0],
      [1, 3],
      [2, 3],
    ]),
  ).toBeCloseTo(1.5, 12);
});
