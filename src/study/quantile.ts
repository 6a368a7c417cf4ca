/**
 * The value below which a share of sorted numbers lies, between neighbours in proportion: definition 7 of Hyndman &
 * Fan, Sample quantiles in statistical packages, The American Statistician 50 (1996) 361-365.
 * @param sorted ascending, none NaN
 * @param share 0 to 1
 * @returns NaN where there are no numbers
 */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const low = sorted[below] ?? NaN;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? NaN;
  return low + (place - below) * (high - low);
}

/** How many of some sorted numbers are at most a given one. */
export function countUpTo(sorted: ArrayLike<number>, value: number): number {
  let [from, to] = [0, sorted.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((sorted[middle] as number) <= value) from = middle + 1;
    else to = middle;
  }
  return from;
}
