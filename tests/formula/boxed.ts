import type { Arithmetic } from '../../src/core/arithmetic';
import { float } from '../../src/core/float';

/** A float64 that does not look like one. */
export interface Boxed {
  readonly x: number;
}

const box = (x: number): Boxed => ({ x });

function one(f: (a: number) => number): (a: Boxed) => Boxed {
  return (a) => box(f(a.x));
}

function two(f: (a: number, b: number) => number): (a: Boxed, b: Boxed) => Boxed {
  return (a, b) => box(f(a.x, b.x));
}

/** The arithmetic of float64 on boxed numbers, with which functions take the way that they have for any arithmetic. */
export const boxed: Arithmetic<Boxed> = {
  read: (text) => box(float.read(text)),
  whole: box,
  add: two((a, b) => float.add(a, b)),
  subtract: two((a, b) => float.subtract(a, b)),
  multiply: two((a, b) => float.multiply(a, b)),
  divide: two((a, b) => float.divide(a, b)),
  power: two((a, b) => float.power(a, b)),
  negate: one((a) => float.negate(a)),
  absolute: one((a) => float.absolute(a)),
  smaller: two((a, b) => float.smaller(a, b)),
  larger: two((a, b) => float.larger(a, b)),
  squareRoot: one((a) => float.squareRoot(a)),
  exponential: one((a) => float.exponential(a)),
  growth: two((a, b) => float.growth(a, b)),
  logarithm: one((a) => float.logarithm(a)),
  logarithm10: one((a) => float.logarithm10(a)),
  floor: one((a) => float.floor(a)),
  ceil: one((a) => float.ceil(a)),
  round: (a, decimals) => box(float.round(a.x, decimals)),
  compare: (a, b) => float.compare(a.x, b.x),
  isKnown: ({ x }) => float.isKnown(x),
  toNumber: ({ x }) => x,
};
