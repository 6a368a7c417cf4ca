import { tieTolerance, widestTie, type Arithmetic } from './arithmetic';
import { wholePower } from './elementary';

/** A finite number as it is, anything else as NaN, so that what cannot be computed never turns into a result. */
export function finite(x: number): number {
  const nothing = x - x;
  return nothing === 0 ? x : nothing;
}

/** How far two numbers may lie apart and count as equal; NaN where one is not known. */
export function largestSummand(a: number, b: number): number {
  return tieTolerance * Math.max(Math.abs(a), Math.abs(b));
}

/** Whether two numbers count as equal; false where one is not known. */
function tiesFloat(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= largestSummand(a, b);
}

/** Whether a number is larger than another by more than a tie; false where one is not known. */
export function exceedsFloat(a: number, b: number): boolean {
  return a > b && a - b > largestSummand(a, b);
}

export function compareFloat(a: number, b: number): number {
  if (a !== a || b !== b) return NaN;
  if (tiesFloat(a, b)) return 0;
  return a < b ? -1 : 1;
}

/** Whether a number stands for the whole number or half that lies this far from it. */
function stands(x: number, whole: number, apart: number): boolean {
  return apart <= widestTie && apart <= largestSummand(x, whole);
}

export function floorFloat(x: number): number {
  const down = Math.floor(x);
  return stands(x, down + 1, down + 1 - x) ? down + 1 : down;
}

export function ceilFloat(x: number): number {
  const up = Math.ceil(x);
  return stands(x, up - 1, x - (up - 1)) ? up - 1 : up;
}

/** From this size on a float64 has no decimals. */
const wholeFrom = 2 ** 53;

export function roundFloat(x: number, decimals: number): number {
  const power = wholePower(10, decimals);
  const size = Math.abs(x) * power;
  if (!(size < wholeFrom)) return x;
  const below = Math.floor(size);
  const rounded = size - below >= 0.5 || stands(size, below + 0.5, below + 0.5 - size) ? below + 1 : below;
  return (Math.sign(x) * rounded) / power + 0;
}

/** Division whose quotient is NaN where there is none. */
export function divideFloat(a: number, b: number): number {
  return finite(a / b);
}

export function powerFloat(a: number, b: number): number {
  return a === a ? finite(a ** b) : a;
}

/** Double precision arithmetic (IEEE 754 binary64). */
export const float: Arithmetic<number> = {
  read: Number,
  whole: (n) => n,
  add: (a, b) => finite(a + b),
  subtract: (a, b) => finite(a - b),
  multiply: (a, b) => finite(a * b),
  divide: divideFloat,
  power: powerFloat,
  negate: (a) => -a,
  absolute: Math.abs,
  smaller: (a, b) => Math.min(a, b),
  larger: (a, b) => Math.max(a, b),
  squareRoot: Math.sqrt,
  exponential: (a) => finite(Math.exp(a)),
  growth: (rate, n) => finite(Math.expm1(n * Math.log1p(rate))),
  logarithm: (a) => finite(Math.log(a)),
  logarithm10: (a) => finite(Math.log10(a)),
  floor: floorFloat,
  ceil: ceilFloat,
  round: roundFloat,
  compare: compareFloat,
  isKnown: (a) => a === a,
  toNumber: (a) => a,
};
