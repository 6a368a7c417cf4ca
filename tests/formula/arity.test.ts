import { expect, it } from 'vitest';
import { arityFault } from '../../src/formula/arity';
import { many } from '../../src/formula/function';

const taking = (least: number, most: number) => ({ name: 'f', arity: [least, most] as const });

it.each([
  [1, 1, 1],
  [1, 2, 2],
  [5, many, 11],
])('finds nothing wrong with what a function takes: %d to %d, given %d', (least, most, given) => {
  expect(arityFault(taking(least, most), given)).toBeUndefined();
});

it.each([
  [1, 1, 2, 'f takes 1 value, not 2'],
  [2, 2, 1, 'f takes 2 values, not 1'],
  [1, 2, 3, 'f takes 1 to 2 values, not 3'],
  [1, many, 0, 'f takes at least 1 value, not 0'],
  [5, many, 4, 'f takes at least 5 values, not 4'],
])('says what a function takes: %d to %d, given %d', (least, most, given, says) => {
  expect(arityFault(taking(least, most), given)).toBe(says);
});
