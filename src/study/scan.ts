import { decimal, type Decimal } from '../core/number';
import type { Curve } from './curve';
import type { SearchRange } from './searchRange';

/** Places at which a search first looks, evenly and by ratio: at least a thousand in all. */
const evenly = 1000;
const byRatio = 400;
/** Decades that the places by ratio reach down towards 0. */
const decades = 8;

/** Where a curve stands at the scanned inputs. */
export interface Scan {
  readonly xs: readonly Decimal[];
  /** The result less the target, in float64; NaN where it cannot be computed. */
  readonly heights: readonly number[];
  /** The largest size of a height that was met. */
  readonly largest: number;
}

/** Inputs by ratio between a small and a large size, of one sign. */
function ratioSteps(from: number, to: number): number[] {
  const near = Math.max(from, to * 10 ** -decades);
  if (!(to > near)) return [];
  return Array.from({ length: byRatio + 1 }, (_, k) => near * (to / near) ** (k / byRatio));
}

/** Inputs to look at: evenly, by ratio to either side of 0, and the given ones, ascending. */
export function placesIn({ from, to }: SearchRange, given: readonly Decimal[]): Decimal[] {
  const [low, high] = [from.toNumber(), to.toNumber()];
  const step = to.minus(from).dividedBy(evenly);
  const even = Array.from({ length: evenly + 1 }, (_, k) => from.plus(step.times(k)));
  const ratios = [
    ...ratioSteps(Math.max(low, 0), high),
    ...ratioSteps(Math.max(-high, 0), -low).map((size) => -size),
  ].map((x) => decimal(x).toSignificantDigits(15));
  const inside = [...even, ...ratios, ...given].filter((x) => x.gte(from) && x.lte(to));
  const sorted = [...inside, from, to].sort((a, b) => a.cmp(b));
  return sorted.filter((x, i) => i === 0 || !x.eq(sorted[i - 1] as Decimal));
}

/** Looks at a curve over a range in float64. */
export function scan(curve: Curve, range: SearchRange, target: number, given: readonly Decimal[]): Scan {
  const xs = placesIn(range, given);
  const heights = xs.map((x) => curve.float(x.toNumber()) - target);
  const sizes = heights.filter((height) => Number.isFinite(height)).map(Math.abs);
  const largest = sizes.reduce((most, size) => Math.max(most, size), 0);
  return { xs, heights, largest };
}
