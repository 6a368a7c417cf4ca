import { tieTolerance, widestTie, type Arithmetic } from './arithmetic';

/** A finite number as it is, anything else as NaN, so that what cannot be computed never turns into a result. */
export function finite(x: number): number {
  return x - x === 0 ? x : NaN;
}

/** Whether two finite numbers differ by at most the tie tolerance of the larger. */
function ties(a: number, b: number): boolean {
  return Math.abs(a - b) <= tieTolerance * Math.max(Math.abs(a), Math.abs(b));
}

/** The same for a number and the whole number or half that it may stand for. */
function stands(x: number, whole: number): boolean {
  return ties(x, whole) && Math.abs(x - whole) <= widestTie;
}

export function compareFloat(a: number, b: number): number {
  if (a !== a || b !== b) return NaN;
  if (a === b || ties(a, b)) return 0;
  return a < b ? -1 : 1;
}

export function floorFloat(x: number): number {
  const whole = Math.round(x);
  return stands(x, whole) ? whole : Math.floor(x);
}

export function ceilFloat(x: number): number {
  const whole = Math.round(x);
  return stands(x, whole) ? whole : Math.ceil(x);
}

/** From this size on a float64 has no decimals. */
const wholeFrom = 2 ** 53;

export function roundFloat(x: number, decimals: number): number {
  const power = 10 ** decimals;
  const size = Math.abs(x) * power;
  if (!(size < wholeFrom)) return x;
  const below = Math.floor(size);
  const rounded = size - below >= 0.5 || stands(size, below + 0.5) ? below + 1 : below;
  return (Math.sign(x) * rounded) / power + 0;
}

/** Division whose quotient is NaN where there is none. */
export function divideFloat(a: number, b: number): number {
  return finite(a / b);
}

export function powerFloat(a: number, b: number): number {
  return a === a ? finite(a ** b) : NaN;
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
