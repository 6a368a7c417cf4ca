import { tieTolerance } from '../../core/arithmetic';
import { ceilFloat, floorFloat } from '../../core/float';
import { wholePower } from '../../core/elementary';

/*
 * Each function loops over the first `n` values of its columns. Most take four values a turn: a column's length is a
 * multiple of four, and values after the n-th may be overwritten with anything. `out` may be one of the operands, as
 * value i of `out` depends only on value i of each operand and is written after they have been read.
 */

type Column = Float64Array;

export function add(out: Column, a: Column, b: Column, n: number): void {
  for (let i = 0; i < n; i += 4) {
    out[i] = a[i]! + b[i]!;
    out[i + 1] = a[i + 1]! + b[i + 1]!;
    out[i + 2] = a[i + 2]! + b[i + 2]!;
    out[i + 3] = a[i + 3]! + b[i + 3]!;
  }
}

export function addNumber(out: Column, a: Column, k: number, n: number): void {
  for (let i = 0; i < n; i += 4) {
    out[i] = a[i]! + k;
    out[i + 1] = a[i + 1]! + k;
    out[i + 2] = a[i + 2]! + k;
    out[i + 3] = a[i + 3]! + k;
  }
}

export function subtract(out: Column, a: Column, b: Column, n: number): void {
  for (let i = 0; i < n; i += 4) {
    out[i] = a[i]! - b[i]!;
    out[i + 1] = a[i + 1]! - b[i + 1]!;
    out[i + 2] = a[i + 2]! - b[i + 2]!;
    out[i + 3] = a[i + 3]! - b[i + 3]!;
  }
}

export function subtractFrom(out: Column, k: number, a: Column, n: number): void {
  for (let i = 0; i < n; i += 4) {
    out[i] = k - a[i]!;
    out[i + 1] = k - a[i + 1]!;
    out[i + 2] = k - a[i + 2]!;
    out[i + 3] = k - a[i + 3]!;
  }
}

export function multiplyColumns(out: Column, a: Column, b: Column, n: number): void {
  for (let i = 0; i < n; i += 4) {
    out[i] = a[i]! * b[i]!;
    out[i + 1] = a[i + 1]! * b[i + 1]!;
    out[i + 2] = a[i + 2]! * b[i + 2]!;
    out[i + 3] = a[i + 3]! * b[i + 3]!;
  }
}

export function multiplyNumber(out: Column, a: Column, k: number, n: number): void {
  for (let i = 0; i < n; i += 4) {
    out[i] = a[i]! * k;
    out[i + 1] = a[i + 1]! * k;
    out[i + 2] = a[i + 2]! * k;
    out[i + 3] = a[i + 3]! * k;
  }
}

/**
 * Division in which a quotient that is not finite becomes NaN. Adding 0 times the quotient does that and leaves every
 * finite one as it is, the sign of 0 included.
 */
export function divideColumns(out: Column, a: Column, b: Column, n: number): void {
  for (let i = 0; i < n; i += 2) {
    const p = a[i]! / b[i]!;
    const q = a[i + 1]! / b[i + 1]!;
    out[i] = p + p * 0;
    out[i + 1] = q + q * 0;
  }
}

/** For a `k` of size 1 or more: a quotient of finite numbers is then finite, and the check for that is left out. */
export function divideByNumber(out: Column, a: Column, k: number, n: number): void {
  for (let i = 0; i < n; i += 4) {
    out[i] = a[i]! / k;
    out[i + 1] = a[i + 1]! / k;
    out[i + 2] = a[i + 2]! / k;
    out[i + 3] = a[i + 3]! / k;
  }
}

export function divideNumberBy(out: Column, k: number, a: Column, n: number): void {
  for (let i = 0; i < n; i += 2) {
    const p = k / a[i]!;
    const q = k / a[i + 1]!;
    out[i] = p + p * 0;
    out[i + 1] = q + q * 0;
  }
}

export function smaller(out: Column, a: Column, b: Column, n: number): void {
  for (let i = 0; i < n; i += 2) {
    out[i] = Math.min(a[i]!, b[i]!);
    out[i + 1] = Math.min(a[i + 1]!, b[i + 1]!);
  }
}

export function smallerNumber(out: Column, a: Column, k: number, n: number): void {
  for (let i = 0; i < n; i += 2) {
    out[i] = Math.min(a[i]!, k);
    out[i + 1] = Math.min(a[i + 1]!, k);
  }
}

export function larger(out: Column, a: Column, b: Column, n: number): void {
  for (let i = 0; i < n; i += 2) {
    out[i] = Math.max(a[i]!, b[i]!);
    out[i + 1] = Math.max(a[i + 1]!, b[i + 1]!);
  }
}

export function largerNumber(out: Column, a: Column, k: number, n: number): void {
  for (let i = 0; i < n; i += 2) {
    out[i] = Math.max(a[i]!, k);
    out[i + 1] = Math.max(a[i + 1]!, k);
  }
}

export function floor(out: Column, a: Column, n: number): void {
  for (let i = 0; i < n; i += 1) out[i] = floorFloat(a[i]!);
}

export function ceil(out: Column, a: Column, n: number): void {
  for (let i = 0; i < n; i += 1) out[i] = ceilFloat(a[i]!);
}

export function mapped(out: Column, a: Column, f: (x: number) => number, n: number): void {
  for (let i = 0; i < n; i += 1) out[i] = f(a[i]!);
}

/** Powers with one small whole exponent for the whole column. */
export function wholePowers(out: Column, a: Column, exponent: number, n: number): void {
  for (let i = 0; i < n; i += 1) {
    const raised = wholePower(a[i]!, exponent);
    out[i] = raised + raised * 0;
  }
}

/**
 * Compares two columns and writes `below`, `same` (within the tie tolerance) or `above`; NaN where either value is NaN.
 */
export function compare(
  out: Column,
  a: Column,
  b: Column,
  [below, same, above]: readonly [number, number, number],
  n: number,
): void {
  for (let i = 0; i < n; i += 1) {
    const x = a[i]!;
    const y = b[i]!;
    const off = x - y;
    const tie = tieTolerance * Math.max(Math.abs(x), Math.abs(y));
    out[i] = off > tie ? above : off < -tie ? below : off === off ? same : NaN;
  }
}

/** The value of `yes` where the condition is 1, of `no` where it is 0, NaN where it is unknown. */
export function choose(out: Column, test: Column, yes: Column, no: Column, n: number): void {
  for (let i = 0; i < n; i += 1) {
    const condition = test[i]!;
    out[i] = condition === 1 ? yes[i]! : condition === 0 ? no[i]! : NaN;
  }
}

/** Short-circuit logic: the right value where the left one equals `goesOn` (1 for and, 0 for or), else the left. */
export function early(out: Column, left: Column, right: Column, goesOn: number, n: number): void {
  for (let i = 0; i < n; i += 1) {
    const first = left[i]!;
    out[i] = first === goesOn ? right[i]! : first;
  }
}
