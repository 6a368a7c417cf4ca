import { decimal, type Decimal } from '../core/number';
import type { Lever } from '../model/view';

/** Where a search looks, in the input's unit; from is below to. */
export interface SearchRange {
  readonly from: Decimal;
  readonly to: Decimal;
}

const widening = 10;
const withoutRange = 100;

/**
 * Where an input is searched when nothing else is said: ten times as far as its range reaches to either side, or from a
 * hundredth to a hundredfold of its number where it has none. The search stops at 0 where the input is never negative,
 * and at 100 for a share in %.
 */
export function defaultRange({ cell, base, range }: Lever): SearchRange {
  const low = range?.low ?? base;
  const high = range?.high ?? base;
  const ends =
    range === undefined
      ? [base.dividedBy(withoutRange), base.times(withoutRange)]
      : [base.minus(base.minus(low).times(widening)), base.plus(high.minus(base).times(widening))];
  const [first = base, second = base] = ends;
  const [from, to] = first.gt(second) ? [second, first] : [first, second];
  const floor = low.isNegative() && !low.isZero() ? from : larger(from, decimal(0));
  const isShare = cell.unitText === '%' && high.lte(100);
  const ceiling = isShare ? smaller(to, decimal(100)) : to;
  if (ceiling.gt(floor)) return { from: floor, to: ceiling };
  return isShare && ceiling.eq(100) ? { from: ceiling.minus(1), to: ceiling } : { from: floor, to: floor.plus(1) };
}

function larger(a: Decimal, b: Decimal): Decimal {
  return a.gt(b) ? a : b;
}

function smaller(a: Decimal, b: Decimal): Decimal {
  return a.lt(b) ? a : b;
}
