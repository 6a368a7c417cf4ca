import { Decimal as Library } from 'decimal.js';
import { finite } from './float';

/**
 * Exact numbers: decimal128's 34 significant digits, rounded half to even (IEEE 754), with our own constructor so that
 * the library's global settings are never touched.
 */
export const Decimal = Library.clone({
  precision: 34,
  rounding: Library.ROUND_HALF_EVEN,
  maxE: 6144,
  minE: -6143,
  toExpNeg: -7,
  toExpPos: 34,
});

/** An exact number. */
export type Decimal = Library;

/** Rounding half away from zero, which is for showing only. */
export const halfAwayFromZero = Library.ROUND_HALF_UP;

/** Most significant digits that a written number may have. */
export const inputDigits = 34;

/** Largest power of ten that a written number may carry. */
export const exponentLimit = 300;

const numberText = /^-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/** Whether a text is one number as model files write it: point for decimals, no thousands mark, no leading plus. */
export function isNumberText(text: string): boolean {
  return numberText.test(text);
}

/** Significant digits written in a number's text, counted from the first that is not 0. */
export function significantDigits(text: string): number {
  const mantissa = text.replace(/[eE].*$/, '').replace(/[-.]/g, '');
  return mantissa.replace(/^0+/, '').length;
}

/** Whether a number's text stays within the powers of ten that every evaluator can hold. */
export function exponentFits(text: string): boolean {
  const written = Number(/[eE]([+-]?\d+)$/.exec(text)?.[1] ?? 0);
  const value = new Decimal(text);
  return Math.abs(written) <= exponentLimit && (value.isZero() || Math.abs(value.e) <= exponentLimit);
}

/** An exact number from its text or from a float64 of at most 15 significant digits. */
export function decimal(value: string | number): Decimal {
  return new Decimal(value);
}

/** Float64 values worked out before: the numbers of a plan that an edit does not touch stay the same objects. */
const floats = new WeakMap<Decimal, number>();

/** The float64 nearest to a number; NaN for NaN and for what float64 does not reach. */
export function floatOf(value: Decimal): number {
  const known = floats.get(value);
  if (known !== undefined) return known;
  const float = finite(value.toNumber());
  floats.set(value, float);
  return float;
}

/** The sum of numbers; 0 of none. */
export function sum(values: readonly Decimal[]): Decimal {
  return values.reduce((total, value) => total.plus(value), new Decimal(0));
}

/** A number's text in JSON's number grammar, with all its digits. */
export function numberToText(value: Decimal): string {
  return value.isZero() ? '0' : value.toString();
}
