import { exponential, logarithm, power } from '../core/elementary';
import { floatOf } from '../core/number';
import type { Batch } from '../model/trials';
import { isCounted, ratedSeconds } from './timeStudy';

/** A batch in the order in which the work was done. */
export interface RunPoint {
  readonly batch: Batch;
  /** Which plant its middle one was, counted over all batches from 1; halves where it has an even number. */
  readonly middle: number;
  /** Plants up to its end, its own included. */
  readonly upTo: number;
  /** Its seconds per plant at a normal pace. */
  readonly seconds: number;
}

/** Seconds of the n-th plant by a curve of learning, T₁ n^b (unit model). */
export interface LearningCurve {
  readonly points: number;
  /** Seconds of the first plant, as the curve has it. */
  readonly first: number;
  /** The exponent b, below 0 where the work gets quicker. */
  readonly exponent: number;
  readonly exponentInterval: readonly [from: number, to: number];
  /** Seconds with each doubling of the plants as a share of those before: 2^b. */
  readonly rate: number;
  readonly rateInterval: readonly [from: number, to: number];
  /** Whether the interval of b lies below 0. */
  readonly isLearning: boolean;
  /** Seconds of the n-th plant, n from 1, with where the curve may lie there. */
  readonly after: (n: number) => CurvePoint;
}

/** A point of a curve of learning, in seconds per plant. */
interface CurvePoint {
  readonly seconds: number;
  readonly standardError: number;
  readonly interval: readonly [from: number, to: number];
}

/** Batches that a line needs so that anything is left over to judge it by. */
const fewest = 3;

/** Batches in order of their days where each has one, else in the order of the file. */
export function inOrder(batches: readonly Batch[]): Batch[] {
  if (batches.some(({ date }) => date === '')) return [...batches];
  return [...batches].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/** The workers named among batches, in the order in which they first occur; none where no two are told apart. */
export function workersIn(batches: readonly Batch[]): string[] {
  const names = [...new Set(batches.map(({ worker }) => worker))];
  return names.length < 2 ? [] : names.filter((name) => name !== '');
}

/** Batches in order as points of a run. What a person left out was work all the same: its plants are counted in. */
export function runOf(batches: readonly Batch[]): RunPoint[] {
  let before = 0;
  return inOrder(batches).map((batch) => {
    const plants = floatOf(batch.plants);
    const middle = before + (plants + 1) / 2;
    before += plants;
    return { batch, middle, upTo: before, seconds: floatOf(ratedSeconds(batch)) / plants };
  });
}

/**
 * The curve through a run, by ordinary least squares of log seconds on log plants at the middle of each batch; each
 * batch counts alike (Draper & Smith, Applied Regression Analysis, chapter 1, for the intervals). None for fewer than
 * three batches.
 * @param t half-width of an interval in standard errors, by degrees of freedom
 */
export function learningCurve(run: readonly RunPoint[], t: (freedom: number) => number): LearningCurve | undefined {
  const counted = run.filter(({ batch }) => isCounted(batch));
  const n = counted.length;
  if (n < fewest) return undefined;
  const xs = counted.map(({ middle }) => logarithm(middle));
  // Measured from the first batch, so that batches that agree give a slope of exactly 0.
  const start = logarithm(counted[0]!.seconds);
  const ys = counted.map(({ seconds }) => logarithm(seconds) - start);
  const [xMean, yMean] = [mean(xs), mean(ys)];
  const spread = total(xs.map((x) => (x - xMean) ** 2));
  const exponent = total(xs.map((x, i) => (x - xMean) * ys[i]!)) / spread;
  const left = total(xs.map((x, i) => (ys[i]! - yMean - exponent * (x - xMean)) ** 2));
  const variance = left / (n - 2);
  const width = t(n - 2);
  const half = width * Math.sqrt(variance / spread);
  const slope = [exponent - half, exponent + half] as const;
  const middle = start + yMean;
  return {
    points: n,
    first: exponential(middle - exponent * xMean),
    exponent,
    exponentInterval: slope,
    rate: power(2, exponent),
    rateInterval: [power(2, slope[0]), power(2, slope[1])],
    isLearning: slope[1] < 0,
    after: (plants) => {
      const away = logarithm(plants) - xMean;
      const [at, error] = [middle + exponent * away, Math.sqrt(variance * (1 / n + away ** 2 / spread))];
      const ends = [exponential(at - width * error), exponential(at + width * error)] as const;
      return { seconds: exponential(at), standardError: exponential(at) * error, interval: ends };
    },
  };
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function mean(values: readonly number[]): number {
  return total(values) / values.length;
}
