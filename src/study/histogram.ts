/** Bins of equal width, next to one another. */
export interface Bins {
  /** Where the first bin begins. */
  readonly from: number;
  readonly width: number;
  readonly count: number;
}

const steps = [1, 2, 5, 10];

/** The least of 1, 2, 5 times a power of ten that is no smaller than a positive size. */
function roundUp(size: number): number {
  const power = Number(`1e${Math.floor(Math.log10(size))}`);
  return (steps.find((step) => step * power >= size) ?? 10) * power;
}

/**
 * Bins of a round width over a span of results, with an edge at the target, so that no bin has results of both sides.
 * @param most how many bins the span may be cut into; one or two more stand out over its ends
 */
export function binsOver(low: number, high: number, target: number, most: number): Bins {
  const width = high > low ? roundUp((high - low) / most) : Math.abs(low - target) || 1;
  const below = Math.ceil((low - target) / width) - 1;
  const above = Math.max(Math.ceil((high - target) / width), below + 1);
  return { from: target + below * width, width, count: above - below };
}

/**
 * How many results lie in each bin; one on an edge counts below it, as a result at the target is not above it. Those
 * beyond either end count in the last bin there.
 */
export function countIn({ from, width, count }: Bins, results: ArrayLike<number>): Float64Array {
  const counts = new Float64Array(count);
  for (let i = 0; i < results.length; i += 1) {
    const bin = Math.ceil(((results[i] as number) - from) / width) - 1;
    counts[Math.min(Math.max(bin, 0), count - 1)]! += 1;
  }
  return counts;
}

/** The share of results up to the end of each bin. */
export function cumulative(counts: Float64Array): Float64Array {
  const all = counts.reduce((sum, count) => sum + count, 0);
  let so = 0;
  return counts.map((count) => (so += count) / all);
}
