import type { Arithmetic } from '../../core/arithmetic';
import { exponential, growth, logarithm, logarithm10, power } from '../../core/elementary';
import { finite, float } from '../../core/float';

/** Float64 arithmetic whose exponentials, logarithms and powers give the same bits on every machine. */
export const repeatable: Arithmetic<number> = {
  ...float,
  power: (a, b) => (a === a ? finite(power(a, b)) : NaN),
  growth: (rate, n) => finite(growth(rate, n)),
  exponential: (a) => finite(exponential(a)),
  logarithm: (a) => finite(logarithm(a)),
  logarithm10: (a) => finite(logarithm10(a)),
};
