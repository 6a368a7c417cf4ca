import { roundStepAbove } from '../core/roundStep';
import { quantile } from './quantile';

/** How results are spread over bins of one width. */
export interface Histogram {
  /** Where the first bin starts. */
  readonly from: number;
  readonly width: number;
  /** For each set of results, the share of its results that lies in each bin. */
  readonly shares: readonly (readonly number[])[];
}

/** Bins for which a picture has room. */
const wantedBins = 60;
/**
 * Share of the results at either end that may lie outside the picture, so that a few extreme draws do not flatten the
 * rest.
 */
const beyond = 0.005;
/** A result this close to an edge, as a share of a bin's width, counts as lying on it. */
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
  // Results that differ by no more than rounding are taken as equal.
  const same = high - low <= 1e-12 * Math.max(Math.abs(low), Math.abs(high));
  const width = roundStepAbove(same ? Math.abs(low) / 100 || 1 : (high - low) / wantedBins, 1 - onEdge);
  const first = Math.floor(low / width + onEdge);
  const bins = Math.floor(high / width + onEdge) + 1 - first;
  return { from: first * width, width, shares: sets.map((sorted) => countIn(sorted, first * width, width, bins)) };
}
