/**
 * The arithmetic that a formula needs, over one kind of number. What cannot be computed (0/0, a logarithm of 0, an
 * overflow) is NaN in every kind and stays NaN through everything that uses it; true is 1, false is 0.
 */
export interface Arithmetic<T> {
  /** The number that a decimal text stands for. */
  read(text: string): T;
  /** A whole number of at most 15 digits. */
  whole(n: number): T;
  add(a: T, b: T): T;
  subtract(a: T, b: T): T;
  multiply(a: T, b: T): T;
  divide(a: T, b: T): T;
  power(a: T, b: T): T;
  negate(a: T): T;
  absolute(a: T): T;
  smaller(a: T, b: T): T;
  larger(a: T, b: T): T;
  squareRoot(a: T): T;
  exponential(a: T): T;
  /** (1 + rate)^n − 1, without losing digits where the rate is near 0. */
  growth(rate: T, n: T): T;
  /** Natural logarithm. */
  logarithm(a: T): T;
  logarithm10(a: T): T;
  /** Rounding down and up, after taking a number within `tieTolerance` of a whole number to be that number. */
  floor(a: T): T;
  ceil(a: T): T;
  /** Rounding to a number of decimals, half away from zero; a number within `tieTolerance` of a half is that half. */
  round(a: T, decimals: number): T;
  /** -1, 0 or 1; two numbers within `tieTolerance` of the larger are equal; NaN where either is not known. */
  compare(a: T, b: T): number;
  isKnown(a: T): boolean;
  toNumber(a: T): number;
}

/** Numbers that differ by at most this share of the larger count as equal, in every evaluator. */
export const tieTolerance = 1e-12;

/** Largest distance at which a number stands for a whole number or half; past 1e11 the share alone is too wide. */
export const widestTie = 0.1;
