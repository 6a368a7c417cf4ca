import { decimal, type Decimal } from '../core/number';
import { shortestNear } from './bracket';
import type { Curve } from './curve';
import type { SearchRange } from './searchRange';

/** A stretch of an input along which one of several results is the lowest. */
export interface LowestStretch {
  readonly from: Decimal;
  readonly to: Decimal;
  /** Index of the curve among those compared; undefined where none can be computed. */
  readonly curve: number | undefined;
}

/** Number of evenly spaced places that are scanned. */
const places = 200;
/** Halvings between two scanned places. */
const halvings = 80;

/** Tolerances, as shares of the numbers compared. */
interface Closeness {
  /** Results this close are equal: the difference is rounding. */
  readonly noise: Decimal;
  /** The place where the lowest changes is given by the shortest number within this share of it. */
  readonly tidy: Decimal;
}

const exactly: Closeness = { noise: decimal('1e-26'), tidy: decimal('1e-18') };
const inFloat: Closeness = { noise: decimal('1e-13'), tidy: decimal('1e-10') };

/** Index of the lowest of several numbers, the first of equals; NaN is skipped. */
export function lowestOf(values: readonly Decimal[], noise = exactly.noise): number | undefined {
  return values.reduce<number | undefined>((best, value, i) => {
    if (value.isNaN() || best === undefined) return value.isNaN() ? best : i;
    const least = values[best] as Decimal;
    return least.minus(value).gt(least.abs().times(noise)) ? i : best;
  }, undefined);
}

/**
 * Which of several results is the lowest along an input. The range is scanned evenly in 200 steps; each change between
 * two neighbours, a crossing or a jump, is found by halving. A result that is the lowest only within one step may be
 * missed.
 * @param given further inputs to scan, such as today's
 * @param quick whether the curves are computed in float64
 * @yields after each place and each halving
 */
export function* lowestAlong(
  curves: readonly Pick<Curve, 'exact'>[],
  range: SearchRange,
  given: readonly Decimal[] = [],
  quick = false,
): Generator<undefined, LowestStretch[]> {
  const { from, to } = range;
  const span = to.minus(from);
  const { noise, tidy } = quick ? inFloat : exactly;
  const at = (x: Decimal): number | undefined =>
    lowestOf(
      curves.map((curve) => curve.exact(x)),
      noise,
    );
  const even = Array.from({ length: places + 1 }, (_, k) => from.plus(span.times(k).dividedBy(places)));
  const xs = [...even, ...given.filter((x) => x.gt(from) && x.lt(to))].sort((a, b) => a.cmp(b));
  const stretches: LowestStretch[] = [];
  let begin = from;
  let before = { x: from, curve: at(from) };
  for (const x of xs) {
    const here = { x, curve: at(x) };
    // A third result may be the lowest for a while between the two.
    while (before.curve !== here.curve) {
      let [left, right] = [before, here];
      for (let step = 0; step < halvings; step += 1) {
        const middle = left.x.plus(right.x).dividedBy(2);
        if (middle.eq(left.x) || middle.eq(right.x)) break;
        const found = { x: middle, curve: at(middle) };
        if (found.curve === before.curve) left = found;
        else right = found;
        yield;
      }
      const change = shortestNear(right.x, tidy, span);
      stretches.push({ from: begin, to: change, curve: before.curve });
      begin = change;
      before = right;
    }
    before = here;
    yield;
  }
  stretches.push({ from: begin, to, curve: before.curve });
  return stretches;
}
