import { tieTolerance, widestTie, type Arithmetic } from './arithmetic';
import { decimal, halfAwayFromZero, type Decimal } from './number';

const unknown = decimal(NaN);
const zero = decimal(0);
const half = decimal('0.5');
const ten = decimal(10);
const tolerance = decimal(tieTolerance);
const smallRate = decimal('1e-17');

function finite(x: Decimal): Decimal {
  return x.isFinite() ? x : unknown;
}

function ties(a: Decimal, b: Decimal): boolean {
  if (a.eq(b)) return true;
  if (a.s !== b.s || Math.abs(a.e - b.e) > 1) return false;
  const larger = a.abs().gt(b.abs()) ? a.abs() : b.abs();
  return a.minus(b).abs().lte(larger.times(tolerance));
}

/** Whether a number stands for a whole number or half. */
function stands(x: Decimal, whole: Decimal): boolean {
  return ties(x, whole) && x.minus(whole).abs().lte(widestTie);
}

function wholeNear(x: Decimal): Decimal | undefined {
  const whole = x.toDecimalPlaces(0, halfAwayFromZero);
  return stands(x, whole) ? whole : undefined;
}

function round(x: Decimal, decimals: number): Decimal {
  if (!x.isFinite()) return unknown;
  if (x.decimalPlaces() <= decimals) return x;
  const power = ten.pow(decimals);
  const size = x.abs().times(power);
  const middle = size.floor().plus(half);
  const rounded = size.gte(middle) || stands(size, middle) ? size.floor().plus(1) : size.floor();
  return (x.isNegative() ? rounded.negated() : rounded).dividedBy(power).plus(zero);
}

function compare(a: Decimal, b: Decimal): number {
  if (a.isNaN() || b.isNaN()) return NaN;
  return ties(a, b) ? 0 : a.cmp(b);
}

/** (1 + rate)^n − 1; where 34 digits cannot hold 1 + rate well, through the first two terms of its logarithm. */
function growth(rate: Decimal, n: Decimal): Decimal {
  if (rate.abs().gt(smallRate)) return finite(rate.plus(1).pow(n).minus(1));
  const exponent = n.times(rate.minus(rate.times(rate).times(half)));
  if (exponent.abs().gt(smallRate)) return finite(exponent.exp().minus(1));
  return exponent.plus(exponent.times(exponent).times(half));
}

function pick(a: Decimal, b: Decimal, sign: 1 | -1): Decimal {
  if (a.isNaN() || b.isNaN()) return unknown;
  return a.cmp(b) * sign >= 0 ? a : b;
}

/** Decimal arithmetic at 34 significant digits. */
export const exact: Arithmetic<Decimal> = {
  read: decimal,
  whole: decimal,
  add: (a, b) => finite(a.plus(b)),
  subtract: (a, b) => finite(a.minus(b)),
  multiply: (a, b) => finite(a.times(b)),
  divide: (a, b) => finite(a.dividedBy(b)),
  power: (a, b) => (a.isNaN() ? unknown : finite(a.pow(b))),
  negate: (a) => a.negated(),
  absolute: (a) => a.abs(),
  smaller: (a, b) => pick(a, b, -1),
  larger: (a, b) => pick(a, b, 1),
  squareRoot: (a) => finite(a.sqrt()),
  exponential: (a) => finite(a.exp()),
  growth,
  logarithm: (a) => finite(a.ln()),
  logarithm10: (a) => finite(a.log()),
  floor: (a) => (a.isInteger() ? a : (wholeNear(a) ?? a.floor())),
  ceil: (a) => (a.isInteger() ? a : (wholeNear(a) ?? a.ceil())),
  round,
  compare,
  isKnown: (a) => !a.isNaN(),
  toNumber: (a) => a.toNumber(),
};
