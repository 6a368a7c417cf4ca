import { tieTolerance } from '../../core/arithmetic';
import { ceilFloat, floorFloat } from '../../core/float';
import { wholePower } from '../../core/elementary';

/*
 * One loop each over the first `n` values of columns, four at a time: columns are a multiple of four long, and what
 * follows the n-th value is of no account. `out` may be one of the columns read: value i is written once value i of
 * every column has been read, and no other is looked at.
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

/** A quotient that is not finite becomes NaN: adding its 0-fold keeps every other, the sign of 0 included. */
export function divideColumns(out: Column, a: Column, b: Column, n: number): void {
  for (let i = 0; i < n; i += 2) {
    const p = a[i]! / b[i]!;
    const q = a[i + 1]! / b[i + 1]!;
    out[i] = p + p * 0;
    out[i + 1] = q + q * 0;
  }
}

/** For a k of at least 1 in size, so that no quotient is too large. */
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

/** Powers whose exponents are one small whole number. */
export function wholePowers(out: Column, a: Column, exponent: number, n: number): void {
  for (let i = 0; i < n; i += 1) {
    const raised = wholePower(a[i]!, exponent);
    out[i] = raised + raised * 0;
  }
}

/** What stands for below, the same (within the tie tolerance) and above; NaN where either is not known. */
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

/** The chosen arm's value; NaN where the condition is not known. */
export function choose(out: Column, test: Column, yes: Column, no: Column, n: number): void {
  for (let i = 0; i < n; i += 1) {
    const condition = test[i]!;
    out[i] = condition === 1 ? yes[i]! : condition === 0 ? no[i]! : NaN;
  }
}

/** The right value where the left one is `goesOn` (1 for and, 0 for or), else the left. */
export function early(out: Column, left: Column, right: Column, goesOn: number, n: number): void {
  for (let i = 0; i < n; i += 1) {
    const first = left[i]!;
    out[i] = first === goesOn ? right[i]! : first;
  }
}
