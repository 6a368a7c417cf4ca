import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/learningCurves.json';
import { halfWidths } from '../../src/study/studentT';
import { inOrder, learningCurve, runOf, type LearningCurve } from '../../src/trade/learningCurve';
import { floating } from '../formula/given';
import { batchesOf, single, type Timed } from './timed';

const { t } = halfWidths(0.05);
const curve = (timed: readonly Timed[]): LearningCurve => learningCurve(runOf(batchesOf(timed)), t)!;

/** Batches of one plant each, timed as the unit model has them by the engine's own learning function. */
function unitTimes(rate: number, first: number, plants: number): Timed[] {
  return single(...Array.from({ length: plants }, (_, i) => first * floating(`learning_factor(${rate}, ${i + 1})`)));
}

describe('a run', () => {
  it('puts each batch at its middle plant, counted from the first', () => {
    expect(
      runOf(
        batchesOf([
          [10, 100],
          [20, 180],
          [1, 8],
        ]),
      ).map(({ middle, upTo }) => [middle, upTo]),
    ).toEqual([
      [5.5, 10],
      [20.5, 30],
      [31, 31],
    ]);
  });

  it('is in order of days where each batch has one, and those of one day as in the file', () => {
    const days = ['2031-03-05', '2031-03-04', '2031-03-05', '2031-03-03'];
    const dated = batchesOf(single(1, 2, 3, 4)).map((batch, i) => ({ ...batch, date: days[i]! }));
    expect(inOrder(dated).map(({ row }) => row)).toEqual([5, 3, 2, 4]);
    expect(inOrder([...dated.slice(0, 3), { ...dated[3]!, date: '' }]).map(({ row }) => row)).toEqual([2, 3, 4, 5]);
  });

  it('counts the plants of a batch that was left out, and does not fit it', () => {
    const batches = batchesOf([
      [10, 100],
      [10, 9000],
      [10, 80],
      [10, 70],
    ]);
    const left = batches.map((batch, i) => (i === 1 ? { ...batch, leftOut: 'fetched water' } : batch));
    expect(runOf(left)[2]!.middle).toBe(25.5);
    expect(learningCurve(runOf(left), t)!.points).toBe(3);
  });
});

describe('a curve of learning', () => {
  // "Chapter 13 Learning Curves", solutions: 80 %, T1 = 300 h: b = -0.321928095, T5 = 178.7; 70 %, 9 h: T3 = 5.114 and
  // T5 = 3.932; 85 %, 75 min: T8 = 46.06 (printed 46.05 from a rounded factor); 95 %, 60 min: T4 = 54.15. Stevenson,
  // Instructor's Manual, table 7S.1: 90 %: factor .634 at 20. The 11th boat at 80 % from 225 and 180 workers: 103.98
  // (printed 103.95 from a rounded factor).
  it.each([
    [0.8, 300, 5, '178.7', 1],
    [0.7, 9, 3, '5.114', 3],
    [0.7, 9, 5, '3.932', 3],
    [0.85, 75, 8, '46.06', 2],
    [0.95, 60, 4, '54.15', 2],
    [0.9, 1, 20, '0.634', 3],
    [0.8, 225, 11, '103.98', 2],
  ] as const)(
    'fitted to units at %d from %d gives the published time of unit %d',
    (rate, first, n, printed, decimals) => {
      const fitted = curve(unitTimes(rate, first, 4));
      expect(fitted.rate).toBeCloseTo(rate, 12);
      expect(fitted.first / first).toBeCloseTo(1, 12);
      expect(fitted.after(n).seconds.toFixed(decimals)).toBe(printed);
      expect(fitted.isLearning).toBe(true);
    },
  );

  it('finds the rate of every table of factors', () => {
    for (const { rate, factors } of checks.recomputed.rates) {
      const at = checks.recomputed.n.map((n, i) => ({ middle: Number(n), seconds: Number(factors[i]) }));
      const [batch] = batchesOf([[1, 1]]);
      const fitted = learningCurve(
        at.map((point) => ({ ...point, batch: batch!, upTo: point.middle })),
        t,
      )!;
      expect(fitted.rate).toBeCloseTo(Number(rate), 5);
    }
  });

  it('is the least-squares line of an independent library', () => {
    const batch = fc.tuple(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 100, max: 5000 }));
    fc.assert(
      fc.property(fc.array(batch, { minLength: 3, maxLength: 20 }), (timed) => {
        const run = runOf(batchesOf(timed));
        const { m, b } = linearRegression(run.map(({ middle, seconds }) => [Math.log(middle), Math.log(seconds)]));
        const fitted = curve(timed);
        expect(fitted.exponent).toBeCloseTo(m, 9);
        expect(Math.log(fitted.first)).toBeCloseTo(b, 8);
      }),
    );
  });

  it('shows none where all batches agree: a slope of exactly 0', () => {
    const fitted = curve([
      [3, 10],
      [6, 20],
      [21, 70],
      [9, 30],
    ]);
    expect(fitted.exponent).toBeCloseTo(0, 14);
    expect(curve(single(7, 7, 7, 7)).exponent).toBe(0);
    expect(curve(single(7, 7, 7, 7)).isLearning).toBe(false);
  });

  it('shows none where batches scatter, or get slower', () => {
    expect(curve(single(10, 12, 9, 11, 10)).isLearning).toBe(false);
    expect(curve(single(10, 11, 12, 13, 14)).isLearning).toBe(false);
  });

  it('is closest to its points in their middle, and wider beyond them', () => {
    const fitted = curve(single(10, 9.2, 8.1, 8.3, 7.4, 7.6));
    const width = (n: number): number => fitted.after(n).interval[1] / fitted.after(n).interval[0];
    expect(width(3)).toBeLessThan(width(1));
    expect(width(100)).toBeGreaterThan(width(6));
  });

  it('needs three batches', () => expect(learningCurve(runOf(batchesOf(single(9, 8))), t)).toBeUndefined());
});
