import { describe, expect, it } from 'vitest';
import { momentsOf } from '../../src/study/moments';

describe('mean and standard deviation', () => {
  it.each<[claim: string, values: number[], mean: number, sd: number]>([
    ['of some', [2, 4, 4, 4, 5, 5, 7, 9], 5, Math.sqrt(32 / 7)],
    ['of equal ones', [3, 3, 3], 3, 0],
    ['of one', [3], 3, NaN],
    ['of none', [], NaN, NaN],
    ['far from 0', [1e15, 1e15 + 2, 1e15 + 4], 1e15 + 2, 2],
  ])('%s', (_claim, values, mean, sd) => expect(momentsOf(values)).toEqual({ mean, sd }));

  it('of a million, to the last digits', () => {
    const values = Float64Array.from({ length: 1_000_000 }, (_, i) => 0.1 + (i % 2));
    const { mean, sd } = momentsOf(values);
    expect(mean).toBeCloseTo(0.6, 15);
    expect(sd).toBeCloseTo(Math.sqrt(0.25 * (1e6 / (1e6 - 1))), 15);
  });
});
