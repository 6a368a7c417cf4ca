import { decimal, type Decimal } from '../../../core/number';
import type { SearchRange } from '../../../study/searchRange';

/** Round places between the ends of a table at most. */
const most = 8;
/** Less than this share of a step beside an end or today's number a round place is left out. */
const near = 0.3;

/** The 1, 2 or 5 times a power of ten next above a size, exactly. */
function roundStep(size: Decimal): Decimal {
  const power = decimal(10).pow(size.e);
  return [1, 2, 5].map((n) => power.times(n)).find((step) => step.gte(size)) ?? power.times(10);
}

/** The numbers that a table shows along an input, ascending: the ends, today's where it is between, and round ones. */
export function roundPlaces({ from, to }: SearchRange, today: Decimal): Decimal[] {
  const step = roundStep(to.minus(from).dividedBy(most));
  const fixed = [from, ...(today.gt(from) && today.lt(to) ? [today] : []), to];
  const isFree = (x: Decimal): boolean => fixed.every((other) => other.minus(x).abs().gt(step.times(near)));
  const places = [...fixed];
  for (let x = from.dividedBy(step).ceil().times(step); x.lt(to); x = x.plus(step)) if (isFree(x)) places.push(x);
  return places.sort((a, b) => a.cmp(b));
}
