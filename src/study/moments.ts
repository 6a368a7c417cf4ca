const run = 128;

/**
 * Sum of how far numbers lie above a level, or of the squares of that. Halves are summed pairwise, so that the rounding
 * error grows only with the logarithm of how many there are (Higham, The accuracy of floating point summation, SIAM J.
 * Sci. Comput. 14 (1993) 783-799).
 */
function pairwise(values: ArrayLike<number>, level: number, squared: boolean, from: number, to: number): number {
  if (to - from > run) {
    const middle = from + ((to - from) >> 1);
    return pairwise(values, level, squared, from, middle) + pairwise(values, level, squared, middle, to);
  }
  let sum = 0;
  for (let i = from; i < to; i += 1) {
    const off = (values[i] as number) - level;
    sum += squared ? off * off : off;
  }
  return sum;
}

/** Mean and standard deviation of some numbers. */
export interface Moments {
  /** NaN where there are none. */
  readonly mean: number;
  /** With n - 1; NaN for fewer than two. */
  readonly sd: number;
}

/**
 * Mean and standard deviation in two passes, the second corrected for what rounding left of the first (Chan, Golub &
 * LeVeque, Algorithms for computing the sample variance, The American Statistician 37 (1983) 242-247).
 */
export function momentsOf(values: ArrayLike<number>): Moments {
  const n = values.length;
  const rough = pairwise(values, 0, false, 0, n) / n;
  const left = pairwise(values, rough, false, 0, n);
  const squares = pairwise(values, rough, true, 0, n);
  const variance = n > 1 ? (squares - (left * left) / n) / (n - 1) : NaN;
  return { mean: rough + left / n, sd: Math.sqrt(Math.max(variance, 0)) };
}
