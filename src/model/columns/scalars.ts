import { compareFloat } from '../../core/float';
import type { Comparison, NumberOperation } from '../../formula/checked';
import type { FormulaFunction } from '../../formula/function';
import { repeatable } from './repeatable';

/** An operation that computes a value from others; comparisons and logic give 1, 0, or NaN where a value is unknown. */
export type Operation = NumberOperation | Comparison | 'and' | 'or' | 'choose' | 'call';

type Scalar = (args: readonly number[]) => number;

function pair(compute: (a: number, b: number) => number): Scalar {
  return ([a = NaN, b = NaN]) => compute(a, b);
}

/** For each comparison, what it gives for a left number below, equal to and above the right one, as 1 or 0. */
export const truths = {
  less: [1, 0, 0],
  atMost: [1, 1, 0],
  greater: [0, 0, 1],
  atLeast: [0, 1, 1],
  equal: [0, 1, 0],
  unequal: [1, 0, 1],
} as const;

function comparison([below, same, above]: readonly [number, number, number]): Scalar {
  return pair((a, b) => {
    const order = compareFloat(a, b);
    return order < 0 ? below : order > 0 ? above : order === 0 ? same : NaN;
  });
}

function call(fn: FormulaFunction): Scalar {
  return (args) => {
    for (const arg of args) if (arg !== arg) return NaN;
    const value = fn.compute(repeatable, args);
    return value - value === 0 ? value : NaN;
  };
}

const scalars: Readonly<Record<Exclude<Operation, 'call'>, Scalar>> = {
  add: pair((a, b) => a + b),
  subtract: pair((a, b) => a - b),
  multiply: pair((a, b) => a * b),
  divide: pair((a, b) => repeatable.divide(a, b)),
  power: pair((a, b) => repeatable.power(a, b)),
  less: comparison(truths.less),
  atMost: comparison(truths.atMost),
  greater: comparison(truths.greater),
  atLeast: comparison(truths.atLeast),
  equal: comparison(truths.equal),
  unequal: comparison(truths.unequal),
  and: pair((a, b) => (a === 1 ? b : a)),
  or: pair((a, b) => (a === 0 ? b : a)),
  choose: ([test = NaN, yes = NaN, no = NaN]) => (test === 1 ? yes : test === 0 ? no : NaN),
};

/** An operation on single numbers, with the same results as the register program. */
export function scalarOf(op: Operation, fn: FormulaFunction | undefined): Scalar {
  if (op !== 'call') return scalars[op];
  if (fn === undefined) throw new Error('a call without a function');
  return call(fn);
}
