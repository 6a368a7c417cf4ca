import { decimal, type Decimal } from '../core/number';
import { shortestNear } from './bracket';
import type { Curve } from './curve';
import type { SearchRange } from './searchRange';

/** A stretch of an input along which one of several results is the lowest. */
export interface LowestStretch {
  readonly from: Decimal;
  readonly to: Decimal;
  /** Place of the curve among those compared; undefined where none can be computed. */
  readonly curve: number | undefined;
}

/** Places looked at, evenly. */
const places = 200;
/** Halvings between two of them. */
const halvings = 80;

/** How closely is looked, as shares of the numbers looked at. */
interface Closeness {
  /** Results this near are equal: the arithmetic's noise. */
  readonly noise: Decimal;
  /** A change of the lowest is told by the shortest number within this share of it. */
  readonly tidy: Decimal;
}

const exactly: Closeness = { noise: decimal('1e-26'), tidy: decimal('1e-18') };
const inFloat: Closeness = { noise: decimal('1e-13'), tidy: decimal('1e-10') };

/** Which of several numbers is the lowest, the first of equals; those that are not known take no part. */
export function lowestOf(values: readonly Decimal[], noise = exactly.noise): number | undefined {
  return values.reduce<number | undefined>((best, value, i) => {
    if (value.isNaN() || best === undefined) return value.isNaN() ? best : i;
    const least = values[best] as Decimal;
    return least.minus(value).gt(least.abs().times(noise)) ? i : best;
  }, undefined);
}

/**
 * Along an input, which of several results is the lowest. Looked at evenly in 200 steps; each change found between two
 * neighbours is halved down to, be it a crossing or a jump. One that comes and goes within a step may be missed.
 * @param given inputs that are looked at besides, such as today's
 * @param quick whether the curves are float64 all through
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
    // Another one may be the lowest for a while between the two.
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
