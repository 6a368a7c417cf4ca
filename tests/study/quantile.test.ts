import { describe, expect, it } from 'vitest';
import { countUpTo, quantile } from '../../src/study/quantile';

describe('quantile', () => {
  it.each<[claim: string, sorted: number[], share: number, result: number]>([
    ['the least', [1, 2, 4], 0, 1],
    ['the largest', [1, 2, 4], 1, 4],
    ['the middle', [1, 2, 4], 0.5, 2],
    ['in proportion between two', [1, 2, 4], 0.75, 3],
    ['of one number', [5], 0.3, 5],
    ['of none', [], 0.5, NaN],
  ])('%s', (_claim, sorted, share, result) => expect(quantile(sorted, share)).toBe(result));
});

describe('how many are at most', () => {
  it.each([
    [0, 0],
    [1, 1],
    [1.5, 1],
    [2, 3],
    [9, 4],
  ])('%d: %d of 1, 2, 2, 3', (value, count) => expect(countUpTo([1, 2, 2, 3], value)).toBe(count));

  it('none of none', () => expect(countUpTo([], 1)).toBe(0));
});
