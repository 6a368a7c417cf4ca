import { decimal, type Decimal } from '../core/number';
import type { BreakevenPoints, Crossing } from './breakeven';
import type { SearchRange } from './searchRange';

/** What lies closer to an end of the range than this share of its width is that end. */
const endShare = decimal('1e-9');

/** A number of a range; the end itself where it is only by the ties of comparisons and rounding beside it. */
export function settledAtEnd(value: Decimal, { from, to }: SearchRange): Decimal {
  const reach = to.minus(from).times(endShare);
  return [from, to].find((end) => value.minus(end).abs().lte(reach)) ?? value;
}

/**
 * A search whose crossings beside an end of the range are at that end: a jump at 0 is found a little above it, as a
 * comparison takes what is close to 0 as 0. Two of them at one end, one up and one down, are none.
 */
export function settledAtEnds(found: BreakevenPoints): BreakevenPoints {
  const { range, breaks } = found;
  const settled = found.crossings.map((crossing) => ({ ...crossing, value: settledAtEnd(crossing.value, range) }));
  const crossings = settled.filter((one) => !settled.some((other) => isUndone(one, other)));
  if (crossings.length + breaks.length > 0 || settled.length === 0) return { ...found, crossings };
  return { ...found, crossings, holds: settled.at(-1)?.direction === 'up' ? 'everywhere' : 'nowhere' };
}

function isUndone(one: Crossing, other: Crossing): boolean {
  const directions = new Set([one.direction, other.direction]);
  return one.value.eq(other.value) && directions.has('up') && directions.has('down');
}
