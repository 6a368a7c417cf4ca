import type { Decimal } from '../../../core/number';
import { exactStepAbove } from '../../../core/roundStep';
import type { SearchRange } from '../../../study/searchRange';

/** The step between round numbers is at least the range divided by this. */
const most = 8;
/** A round number closer than this share of a step to an end or to today's number is left out. */
const near = 0.3;

/**
 * The numbers that a table shows along an input, ascending: both ends, today's number where it lies between them, and
 * round ones.
 */
export function roundPlaces({ from, to }: SearchRange, today: Decimal): Decimal[] {
  const step = exactStepAbove(to.minus(from).dividedBy(most));
  const fixed = [from, ...(today.gt(from) && today.lt(to) ? [today] : []), to];
  const isFree = (x: Decimal): boolean => fixed.every((other) => other.minus(x).abs().gt(step.times(near)));
  const places = [...fixed];
  // Where the range is one of the last digits, a step more is the same number: steps are counted, not compared.
  const first = from.dividedBy(step).ceil();
  for (let k = 0; k <= most; k += 1) {
    const x = first.plus(k).times(step);
    if (x.gte(from) && x.lt(to) && isFree(x)) places.push(x);
  }
  return places.sort((a, b) => a.cmp(b));
}
