import { floatOf } from '../core/number';
import type { Batch } from '../model/trials';
import { isCounted, ownSeconds } from './timeStudy';

/** A batch that lies far from the others of its step. */
export interface OddBatch {
  readonly row: number;
  /** Its seconds per plant at a normal pace. */
  readonly seconds: number;
  /** The median of the batches. */
  readonly median: number;
  /** Its modified z-score: below 0 where it was quicker. */
  readonly score: number;
}

/** A batch is odd from beyond this score on. */
export const oddScore = 3.5;
/** 0.75 quantile of the normal distribution as the rule has it: scores are then like standard deviations. */
const scale = 0.6745;
/** With fewer batches the median deviation is that of one or two batches, and almost any batch looks odd. */
const fewest = 5;

/** The middle value, or the mean of the two in the middle; NaN for none. */
export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return (sorted[Math.ceil(middle) - 1]! + sorted[Math.floor(middle)]!) / 2;
}

/**
 * Modified z-scores 0.6745 (x − median) / MAD, MAD the median of the distances from the median (Iglewicz & Hoaglin, How
 * to Detect and Handle Outliers, 1993); undefined where over half of the values are the same, as then MAD is 0.
 */
export function oddScores(values: readonly number[]): number[] | undefined {
  const median = medianOf(values);
  const deviation = medianOf(values.map((value) => Math.abs(value - median)));
  if (!(deviation > 0)) return undefined;
  return values.map((value) => (scale * (value - median)) / deviation);
}

/** The odd ones among the batches of one step that count; none among fewer than five. */
export function oddBatches(batches: readonly Batch[]): OddBatch[] {
  const counted = batches.filter(isCounted);
  if (counted.length < fewest) return [];
  const seconds = counted.map((batch) => floatOf(ownSeconds(batch)));
  const median = medianOf(seconds);
  return (oddScores(seconds) ?? []).flatMap((score, i) => {
    if (Math.abs(score) <= oddScore) return [];
    return [{ row: counted[i]!.row, seconds: seconds[i]!, median, score }];
  });
}
