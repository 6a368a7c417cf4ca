import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../src/study/normal';
import { halfWidths } from '../../src/study/studentT';
import { compareWays, welchFreedom, type WaysCompared, type WaysTerms } from '../../src/trade/waysCompared';
import { batchesOf, single, usualTerms, type Timed } from './timed';

const terms: WaysTerms = { ...usualTerms, powerZ: normalQuantile(0.8) };

function compared(first: readonly Timed[], second: readonly Timed[], others: Partial<WaysTerms> = {}): WaysCompared {
  return compareWays(batchesOf(first), batchesOf(second), { ...terms, ...others })!;
}

describe('two ways of working', () => {
  // Hours of sleep gained with two drugs (Student, Biometrika 6, 1908). t.test(extra ~ group, data = sleep) of R prints
  // in its documentation t = -1.8608, df = 17.776, means 0.75 and 2.33, interval -3.3654832 to 0.2054832.
  const sleep = [
    single(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2),
    single(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4),
  ] as const;

  it('are compared as Welch’s test compares Student’s sleep data', () => {
    const { first, second, saved, spread } = compared(...sleep);
    expect([first, second].map(({ secondsPerPlant }) => secondsPerPlant.toString())).toEqual(['0.75', '2.33']);
    expect(spread!.freedom.toFixed(3)).toBe('17.776');
    expect(saved.dividedBy(spread!.standardError).toFixed(4)).toBe('-1.8608');
    expect(spread!.interval.map((end) => end.toFixed(7))).toEqual(['-3.3654832', '0.2054832']);
    expect(spread!.isSettled).toBe(false);
  });

  it('differ by seconds per plant of all plants, and not of the mean batch', () => {
    const { saved, ratio } = compared(
      [
        [10, 200],
        [90, 900],
      ],
      [[10, 100]],
    );
    expect([saved.toString(), ratio.toFixed(4)]).toEqual(['1', '0.9091']);
  });

  it('swap with their signs, and their ratio with its inverse', () => {
    const [ways, back] = [compared(sleep[0], sleep[1]), compared(sleep[1], sleep[0])];
    expect(back.saved.toString()).toBe(ways.saved.neg().toString());
    expect(back.spread!.interval[0].toFixed(25)).toBe(ways.spread!.interval[1].neg().toFixed(25));
    expect(back.spread!.ratioInterval[0].times(ways.spread!.ratioInterval[1]).toNumber()).toBeCloseTo(1, 12);
  });

  it('have a ratio with an interval around it that stays above 0', () => {
    const { ratio, spread } = compared(single(10, 12, 11, 13), single(8, 9, 8.5, 9.5));
    const [from, to] = spread!.ratioInterval;
    expect(from.gt(0) && from.lt(ratio) && to.gt(ratio)).toBe(true);
    expect(from.times(to).sqrt().minus(ratio).abs().toNumber()).toBeLessThan(1e-14);
  });

  it('are settled where the interval leaves out 0', () => {
    expect(compared(single(10, 11, 10.5, 11.5), single(5, 6, 5.5, 6.5)).spread!.isSettled).toBe(true);
    expect(compared(single(5, 6, 5.5, 6.5), single(10, 11, 10.5, 11.5)).spread!.isSettled).toBe(true);
  });

  it('have no interval with one batch of a way, or where all batches of each way agree', () => {
    expect(compared(single(10), single(8, 9, 8.5)).spread).toBeUndefined();
    expect(compared(single(10, 10), single(8, 8, 8)).spread).toBeUndefined();
  });

  it('have the degrees of freedom of the way that varies where the other does not', () => {
    expect(compared(single(10, 10, 10), single(8, 9, 8.5, 9)).spread!.freedom).toBeCloseTo(3, 12);
    expect(welchFreedom(1, 6, 1, 6)).toBeCloseTo(10, 12);
  });

  it('are not compared without a batch, nor with one that was left out', () => {
    const left = batchesOf(single(10)).map((batch) => ({ ...batch, leftOut: 'fell in' }));
    expect(compareWays([], batchesOf(single(8)), terms)).toBeUndefined();
    expect(compareWays(left, batchesOf(single(8)), terms)).toBeUndefined();
  });
});

describe('batches planned to tell two ways apart', () => {
  // n = (z + z_power)² (σ₁² + σ₂²) / δ²: with σ = 1 each, δ = 1, 95 % and 80 %: 7.8489 × 2 = 15.698, so 16. It is the
  // 16/δ² of Lehr (Statistics in Medicine 11, 1992; van Belle, Statistical Rules of Thumb).
  it('are 16 of each way for a difference of one standard deviation', () => {
    expect(compared(single(9, 10, 11), single(8, 9, 10)).spread!.batchesEach.toString()).toBe('16');
  });

  it('are four times as many for half the difference, rounded up from 62.8', () => {
    expect(compared(single(9, 10, 11), single(8.5, 9.5, 10.5)).spread!.batchesEach.toString()).toBe('63');
  });

  it('are without end where there is no difference', () => {
    expect(compared(single(9, 10, 11), single(9, 10, 11)).spread!.batchesEach.toString()).toBe('Infinity');
  });

  it('hold at other confidence: 23.36 for 99 %', () => {
    const widths = halfWidths(0.01);
    expect(compared(single(9, 10, 11), single(8, 9, 10), { halfWidths: widths }).spread!.batchesEach.toString()).toBe(
      '24',
    );
  });
});
