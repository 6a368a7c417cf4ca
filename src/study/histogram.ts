import { roundStepAbove } from '../core/roundStep';
import { quantile } from './quantile';

/** How results are spread over bins of one width. */
export interface Histogram {
  /** Where the first bin starts. */
  readonly from: number;
  readonly width: number;
  /** By set of results: of each bin the share of the results that lies in it. */
  readonly shares: readonly (readonly number[])[];
}

/** Bins that a picture has room for. */
const wantedBins = 60;
/** Share at either end that may lie beyond the picture, so that a few far draws do not flatten the rest. */
const beyond = 0.005;
/** Part of a bin within which a result counts as lying on its edge. */
const onEdge = 1e-9;

function countIn(sorted: ArrayLike<number>, from: number, width: number, bins: number): number[] {
  const shares = new Array<number>(bins).fill(0);
  for (let i = 0; i < sorted.length; i += 1) {
    const bin = Math.floor((sorted[i]! - from) / width + onEdge);
    if (bin >= 0 && bin < bins) shares[bin]! += 1 / sorted.length;
  }
  return shares;
}

/**
 * A histogram of one or two sets of results over common bins of a round width, whose edges are multiples of it.
 * @param sets each ascending and not empty
 */
export function histogram(sets: readonly ArrayLike<number>[]): Histogram {
  const low = Math.min(...sets.map((sorted) => quantile(sorted, beyond)));
  const high = Math.max(...sets.map((sorted) => quantile(sorted, 1 - beyond)));
  // Results that differ by rounding alone are one result.
  const same = high - low <= 1e-12 * Math.max(Math.abs(low), Math.abs(high));
  const width = roundStepAbove(same ? Math.abs(low) / 100 || 1 : (high - low) / wantedBins, 1 - onEdge);
  const first = Math.floor(low / width + onEdge);
  const bins = Math.floor(high / width + onEdge) + 1 - first;
  return { from: first * width, width, shares: sets.map((sorted) => countIn(sorted, first * width, width, bins)) };
}
