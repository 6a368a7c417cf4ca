import { wording } from '../language/wording';
import type { FormulaFunction } from './function';

/** What is wrong with how many values a call gives to a function, as a clause; undefined where it is right. */
export function arityFault(
  { name, arity }: Pick<FormulaFunction, 'name' | 'arity'>,
  given: number,
): string | undefined {
  const [least, most] = arity;
  if (given >= least && given <= most) return undefined;
  if (most === Infinity) {
    return least === 1
      ? wording`${name} takes at least 1 value, not ${given}`
      : wording`${name} takes at least ${least} values, not ${given}`;
  }
  if (least < most) return wording`${name} takes ${least} to ${most} values, not ${given}`;
  return least === 1
    ? wording`${name} takes 1 value, not ${given}`
    : wording`${name} takes ${least} values, not ${given}`;
}
