import type { Arithmetic } from '../../src/core/arithmetic';
import { float } from '../../src/core/float';

/** A number with the size of the largest summand met on the way to it, brought to the number's own unit and scale. */
export interface Sized {
  readonly value: number;
  readonly size: number;
}

function sized(value: number, ...sizes: number[]): Sized {
  return { value, size: Math.max(Math.abs(value), ...sizes) };
}

/** What a number's largest summand is in proportion to the number. */
function proportion({ value, size }: Sized): number {
  return value === 0 ? 1 : size / Math.abs(value);
}

function onOne(compute: (a: number) => number): (a: Sized) => Sized {
  return (a) => sized(compute(a.value));
}

/** Float64 that remembers summands: what rounding may have left of a difference is judged by what was subtracted. */
export const sizedArithmetic: Arithmetic<Sized> = {
  read: (text) => sized(float.read(text)),
  whole: (n) => sized(n),
  add: (a, b) => sized(a.value + b.value, a.size, b.size),
  subtract: (a, b) => sized(a.value - b.value, a.size, b.size),
  multiply: (a, b) => sized(a.value * b.value, a.size * Math.abs(b.value), Math.abs(a.value) * b.size),
  divide: (a, b) => {
    const value = float.divide(a.value, b.value);
    return sized(value, a.size / Math.abs(b.value), Math.abs(value) * proportion(b));
  },
  power: (a, b) => {
    const value = float.power(a.value, b.value);
    return sized(value, Math.abs(value * b.value) * proportion(a));
  },
  negate: (a) => sized(-a.value, a.size),
  absolute: (a) => sized(Math.abs(a.value), a.size),
  smaller: (a, b) => (b.value < a.value ? b : a),
  larger: (a, b) => (b.value > a.value ? b : a),
  squareRoot: (a) => sized(Math.sqrt(a.value), Math.sqrt(Math.abs(a.value)) * proportion(a)),
  exponential: (a) => sized(float.exponential(a.value), float.exponential(a.value) * a.size),
  growth: (rate, n) => sized(float.growth(rate.value, n.value)),
  logarithm: (a) => sized(float.logarithm(a.value), proportion(a)),
  logarithm10: (a) => sized(float.logarithm10(a.value), proportion(a)),
  floor: onOne((a) => float.floor(a)),
  ceil: onOne((a) => float.ceil(a)),
  round: (a, decimals) => sized(float.round(a.value, decimals)),
  compare: (a, b) => float.compare(a.value, b.value),
  isKnown: (a) => float.isKnown(a.value),
  toNumber: (a) => a.value,
};
