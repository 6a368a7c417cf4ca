import { expect, test } from 'vitest';
import { chanceOf } from './chance';

test('the same seed gives the same rounds, another one others', () => {
  const numbers = (seed: number): number[] => {
    const chance = chanceOf(seed);
    return Array.from({ length: 20 }, () => chance.whole(0, 1000));
  };
  expect(numbers(3)).toEqual(numbers(3));
  expect(numbers(3)).not.toEqual(numbers(4));
  expect(Math.max(...numbers(3))).toBeLessThan(1000);
});
