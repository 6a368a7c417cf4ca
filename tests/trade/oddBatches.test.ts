import fc from 'fast-check';
import { median, medianAbsoluteDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { medianOf, oddBatches, oddScore, oddScores } from '../../src/trade/oddBatches';
import { batchesOf, single } from './timed';

const odd = (...seconds: readonly number[]) => oddBatches(batchesOf(single(...seconds)));

describe('the modified z-score', () => {
  // The set of S. Seo, A Review and Comparison of Methods for Detecting Outliers in Univariate Data Sets (University of
  // Pittsburgh, 2006), from memory: median 4, MAD 0.3, and 14 and 15 are the two outliers. Scores 0.6745 (x − 4) / MAD,
  // recomputed with an independent library.
  const set = [3.2, 3.4, 3.7, 3.7, 3.8, 3.9, 4, 4, 4.1, 4.2, 4.7, 4.8, 14, 15];

  it('is 0.6745 distances from the median in median distances', () => {
    const deviation = medianAbsoluteDeviation(set);
    const scores = oddScores(set)!;
    expect(scores.at(-1)).toBeCloseTo((0.6745 * 11) / deviation, 10);
    expect(scores.filter((score) => Math.abs(score) > oddScore)).toHaveLength(2);
  });

  it('has the median and the median deviation of an independent library', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 30 }), (values) => {
        expect(medianOf(values)).toBe(median(values));
        const deviation = medianAbsoluteDeviation(values);
        const scores = oddScores(values);
        if (deviation === 0) expect(scores).toBeUndefined();
        else expect(scores![0]).toBeCloseTo((0.6745 * (values[0]! - median(values))) / deviation, 10);
      }),
    );
  });
});

describe('odd batches', () => {
  it('are those beyond 3.5, quick ones too, each with the median it lies from', () => {
    expect(odd(10, 11, 10.5, 9.5, 10, 30).map(({ row, median: middle }) => [row, middle])).toEqual([[7, 10.25]]);
    expect(odd(10, 11, 10.5, 9.5, 10, 1)[0]!.score).toBeLessThan(-oddScore);
  });

  it('hang on seconds per plant at a normal pace, not on a batch’s size', () => {
    expect(
      oddBatches(
        batchesOf([
          [10, 100],
          [100, 1010],
          [20, 198],
          [12, 121],
          [15, 152],
        ]),
      ),
    ).toEqual([]);
  });

  it('are none among fewer than five, and none where over half agree, as there is no measure then', () => {
    expect(odd(10, 10.1, 9.9, 50)).toEqual([]);
    expect(odd(10, 10, 10, 10, 50)).toEqual([]);
    expect(odd(7, 7, 7, 7, 7)).toEqual([]);
  });

  it('do not count what a person left out', () => {
    const batches = batchesOf(single(10, 11, 10.5, 9.5, 10, 30));
    expect(oddBatches(batches.map((batch) => (batch.row === 7 ? { ...batch, leftOut: 'rain' } : batch)))).toEqual([]);
  });
});
