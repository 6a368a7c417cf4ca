import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { shapes, type Shape } from '../../src/model/cell';
import { distributionOf, medianOf, type Distribution } from '../../src/study/distribution';

function of(shape: Shape, low: number, high: number, value = low): Distribution {
  return distributionOf({ low: decimal(low), high: decimal(high), shape }, decimal(value));
}

const cuts = 20_000;

/** Mean and variance from the quantile function, at the middles of equal slices of chance. */
function fromQuantiles({ quantile }: Distribution): { mean: number; variance: number } {
  const values = Array.from({ length: cuts }, (_, k) => quantile((k + 0.5) / cuts));
  const mean = values.reduce((sum, x) => sum + x, 0) / cuts;
  return { mean, variance: values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / cuts };
}

describe.each(shapes)('%s', (shape) => {
  const [low, high, value] = [2, 7, 3];
  const found = of(shape, low, high, value);

  it('mean and variance are those of its quantiles', () => {
    const { mean, variance } = fromQuantiles(found);
    // Slices leave out a little of a tail without end.
    expect(found.mean / mean).toBeCloseTo(1, 4);
    expect(found.variance / variance).toBeCloseTo(1, 2);
  });

  it('never falls as the chance rises', () => {
    const values = Array.from({ length: 999 }, (_, k) => found.quantile((k + 1) / 1000));
    expect(values.every((x, k) => k === 0 || x >= values[k - 1]!)).toBe(true);
  });

  it('is finite at the smallest and largest chance that is drawn', () => {
    expect([2 ** -53, 1 - 2 ** -53].map((p) => Number.isFinite(found.quantile(p)))).toEqual([true, true]);
  });

  it('with equal ends is certain', () => {
    const certain = of(shape, 4, 4, 4);
    expect([certain.mean, certain.variance, certain.quantile(0.01), certain.quantile(0.99)]).toEqual([4, 0, 4, 4]);
  });

  it('has ends far apart without overflow', () => {
    const wide = of(shape, 1e-300, 1e299, 1);
    expect([0.05, 0.5, 0.95].map((p) => Number.isFinite(wide.quantile(p)))).toEqual([true, true, true]);
  });
});

describe('what a range means', () => {
  it.each<[Shape, number, number]>([
    ['triangular', 2, 7],
    ['pert', 2, 7],
    ['uniform', 2, 7],
  ])('%s: from low to high', (shape, low, high) => {
    const { quantile } = of(shape, low, high, 3);
    expect(quantile(2 ** -53)).toBeCloseTo(low, 2);
    expect(quantile(1 - 2 ** -53)).toBeCloseTo(high, 2);
  });

  it('either: low or high, as often', () => {
    const { quantile } = of('either', 2, 7);
    expect([0.01, 0.4999, 0.5, 0.99].map((p) => quantile(p))).toEqual([2, 2, 7, 7]);
  });

  it.each<[Shape]>([['normal'], ['lognormal']])('%s: low and high are the 5th and 95th percentile', (shape) => {
    const { quantile } = of(shape, 2, 7);
    expect(quantile(0.05)).toBeCloseTo(2, 14);
    expect(quantile(0.95)).toBeCloseTo(7, 14);
  });

  it('normal goes below low and above high', () => {
    const { quantile } = of('normal', 2, 7);
    expect([quantile(0.01) < 2, quantile(0.99) > 7]).toEqual([true, true]);
  });

  it('lognormal needs a low above 0', () => expect(of('lognormal', 0, 7).quantile(0.5)).toBeNaN());

  it('a value set outside the range counts as its nearer end', () => {
    expect(of('triangular', 2, 7, 9).mean).toBe(of('triangular', 2, 7, 7).mean);
    expect(of('pert', 2, 7, -1).mean).toBe(of('pert', 2, 7, 2).mean);
  });

  it('triangular and PERT with the mode at an end', () => {
    expect(of('triangular', 0, 1, 0).quantile(0.75)).toBeCloseTo(0.5, 15);
    expect(of('triangular', 0, 1, 1).quantile(0.25)).toBeCloseTo(0.5, 15);
    expect(of('pert', 0, 1, 1).quantile(0.5)).toBeCloseTo(0.5 ** 0.2, 12);
  });
});

describe('the median', () => {
  it.each<[Shape, number, number]>([
    ['uniform', 3, 4.5],
    ['either', 3, 4.5],
    ['normal', 3, 4.5],
    ['lognormal', 3, Math.sqrt(14)],
    ['triangular', 7, 2 + Math.sqrt(12.5)],
  ])('%s', (shape, value, median) => {
    expect(medianOf({ low: decimal(2), high: decimal(7), shape }, decimal(value))).toBeCloseTo(median, 14);
  });
});
