import { describe, expect, it } from 'vitest';
import { spreadOf, summaryOf } from '../../../src/present/howSure/summary';

const ten = Float64Array.from([-2, -1, 0, 0, 1, 2, 3, 4, 5, 8]);

describe('what draws come to', () => {
  it('are the mean, its error and the spread', () => {
    const { mean, sd, meanError, count } = summaryOf(ten, 0);
    expect([count, mean]).toEqual([10, 2]);
    // Squares of what each is off: 16 9 4 4 1 0 1 4 9 36 = 84.
    expect(sd).toBeCloseTo(Math.sqrt(84 / 9), 12);
    expect(meanError).toBeCloseTo(Math.sqrt(84 / 9 / 10), 12);
  });
  it('count those above the target apart from those that meet it', () => {
    expect(summaryOf(ten, 0)).toMatchObject({ above: 0.6, equal: 0.2 });
    expect(summaryOf(ten, 8)).toMatchObject({ above: 0, equal: 0.1 });
    expect(summaryOf(ten, -3)).toMatchObject({ above: 1, equal: 0 });
  });
  it('have percentiles between neighbours in proportion', () => {
    // Definition 7 of Hyndman & Fan: the 25th lies at place 2.25, counted from 0.
    const percentiles = summaryOf(ten, 0).percentiles.map((value) => Number(value.toFixed(9)));
    expect(percentiles).toEqual([-1.55, -1.1, 0, 1.5, 3.75, 5.3, 6.65]);
  });
  it('have a curve from the least to the most', () => {
    const { curve } = summaryOf(ten, 0);
    expect([curve[0], curve[100], curve[200]]).toEqual([-2, 1.5, 8]);
  });
  it('know no spread of one draw', () => {
    const { count, mean, sd, percentiles } = summaryOf(Float64Array.of(3), 0);
    expect([count, mean, sd]).toEqual([1, 3, NaN]);
    expect(new Set(percentiles)).toEqual(new Set([3]));
  });
  it('are nothing without results, and leave out another plan that has none', () => {
    expect(spreadOf(new Float64Array(0), ten, 0)).toBeUndefined();
    const spread = spreadOf(ten, new Float64Array(0), 0);
    expect(spread?.beside).toBeUndefined();
    expect(spread?.histogram.shares).toHaveLength(1);
  });
});
