import { decimal, type Decimal } from '../core/number';
import { isCurrency } from '../core/unit';
import type { Cell } from '../model/cell';
import type { Lever } from '../model/view';

/** Where a search looks, in the input's unit; from is below to. */
export interface SearchRange {
  readonly from: Decimal;
  readonly to: Decimal;
}

const widening = 10;
const withoutRange = 100;
const zero = decimal(0);
const mostOfShare = decimal(100);
/** The kind of quantity that a difference of temperatures is. */
const warmth = 'K';

/** Whether nothing says where to search an input: its number is 0, and it has no range or one without width. */
export function isGuess({ base, range }: Pick<Lever, 'base' | 'range'>): boolean {
  return base.isZero() && reachOf(base, range).isZero();
}

/** The largest distance from a number to the ends of its range, or between those ends. */
function reachOf(base: Decimal, range: Lever['range']): Decimal {
  return range === undefined ? zero : larger(range.high, base).minus(smaller(range.low, base));
}

/** From a hundredth to a hundredfold of a number; from −1 to 1 where it is 0. */
function byRatio(base: Decimal): SearchRange {
  if (base.isZero()) return { from: decimal(-1), to: decimal(1) };
  const ends = [base.dividedBy(withoutRange), base.times(withoutRange)] as const;
  return base.isNegative() ? { from: ends[1], to: ends[0] } : { from: ends[0], to: ends[1] };
}

/**
 * The default range over which an input is searched. It reaches to either side of the input's number ten times as far
 * as that and its range lie apart, so that a number outside its range never narrows the search; without a range, from a
 * hundredth to a hundredfold of the number. It stops at 0 where neither low nor the number is negative, and at 100 for
 * a share in %.
 */
export function defaultRange({ cell, base, range }: Lever): SearchRange {
  const reach = reachOf(base, range);
  const { from, to } = reach.isZero()
    ? byRatio(base)
    : { from: base.minus(reach.times(widening)), to: base.plus(reach.times(widening)) };
  const staysPositive = range?.low.gte(0) === true && base.gte(0);
  const isShare = cell.unitText === '%' && larger(range?.high ?? base, base).lte(mostOfShare);
  return { from: staysPositive ? larger(from, zero) : from, to: isShare ? smaller(to, mostOfShare) : to };
}

/** Whether a unit measures an amount of something: things, time, room or mass. Money and plain numbers may be owed. */
function isAmount({ unit }: Cell): boolean {
  const kinds = [...(unit?.dimension.keys() ?? [])];
  return kinds.length > 0 && !kinds.some((kind) => isCurrency(kind) || kind === warmth);
}

/**
 * The default range without the numbers that an input cannot have: an amount that is 0 today, and whose own range does
 * not reach below 0, is not searched there.
 */
export function possibleRange(lever: Lever): SearchRange {
  const { from, to } = defaultRange(lever);
  const isOwed = lever.base.isNegative() || lever.range?.low.isNegative() === true;
  return { from: isAmount(lever.cell) && !isOwed ? larger(from, zero) : from, to };
}

function larger(a: Decimal, b: Decimal): Decimal {
  return a.gt(b) ? a : b;
}

function smaller(a: Decimal, b: Decimal): Decimal {
  return a.lt(b) ? a : b;
}
