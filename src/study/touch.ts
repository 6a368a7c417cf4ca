import { decimal, type Decimal } from '../core/number';
import type { IsAbove, Place } from './bracket';

/** What a closer look between scanned places of one side found. */
export interface Touches {
  /** Inputs at which the curve meets the target without a change of side. */
  readonly touching: readonly Decimal[];
  /** Changes of side that lie between two scanned places. */
  readonly changes: readonly (readonly [from: Place, to: Place])[];
}

const golden = (Math.sqrt(5) - 1) / 2;
const floatSteps = 45;
const exactSteps = 90;
/** A dip is looked at exactly where float64 sees it come this near to the target, as a share of its surroundings. */
const promising = 1e-6;
/** A dip that comes this near to the target meets it. */
const meeting = decimal('1e-24');

/** Golden section towards the least distance from the target, in float64. */
function lowestFloat(distance: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < floatSteps; step += 1) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (distance(left) <= distance(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}

/** The same exactly; it stops early where the curve turns out to cross the target. */
function lowestExact(height: (x: Decimal) => Decimal, from: Place, to: Place, isAbove: IsAbove): Place {
  const share = decimal(5).sqrt().minus(1).dividedBy(2);
  const at = (x: Decimal): Place => ({ x, y: height(x) });
  let [low, high] = [from.x, to.x];
  let left = at(high.minus(share.times(high.minus(low))));
  let right = at(low.plus(share.times(high.minus(low))));
  for (let step = 0; step < exactSteps; step += 1) {
    const best = left.y.abs().lte(right.y.abs()) ? left : right;
    if (isAbove(best.y) !== isAbove(from.y) || best.y.isZero()) return best;
    if (best === left) {
      [high, right] = [right.x, left];
      left = at(high.minus(share.times(high.minus(low))));
    } else {
      [low, left] = [left.x, right];
      right = at(low.plus(share.times(high.minus(low))));
    }
  }
  return left.y.abs().lte(right.y.abs()) ? left : right;
}

/** Whether the distance from the target has a dip at the middle of three places of one side. */
function dips(a: Place, b: Place, c: Place, isAbove: IsAbove): boolean {
  if (a.y.isNaN() || b.y.isNaN() || c.y.isNaN()) return false;
  if (isAbove(a.y) !== isAbove(b.y) || isAbove(b.y) !== isAbove(c.y)) return false;
  return a.y.abs().gt(b.y.abs()) && c.y.abs().gte(b.y.abs()) && !c.y.isZero();
}

/**
 * Looks closer wherever a curve comes near the target between scanned places without a change of side.
 * @param height the result less the target, exactly
 * @param quick the same in float64
 */
export function touches(
  places: readonly Place[],
  height: (x: Decimal) => Decimal,
  quick: (x: number) => number,
  isAbove: IsAbove,
): Touches {
  const touching: Decimal[] = [];
  const changes: [Place, Place][] = [];
  for (let i = 1; i + 1 < places.length; i += 1) {
    const [a, b, c] = places.slice(i - 1, i + 2) as [Place, Place, Place];
    if (!dips(a, b, c, isAbove)) continue;
    const around = a.y.abs().gt(c.y.abs()) ? a.y.abs() : c.y.abs();
    const near = lowestFloat((x) => Math.abs(quick(x)), a.x.toNumber(), c.x.toNumber());
    const crosses = isAbove(decimal(quick(near))) !== isAbove(b.y);
    if (!crosses && !(Math.abs(quick(near)) <= promising * around.toNumber())) continue;
    const low = lowestExact(height, a, c, isAbove);
    if (isAbove(low.y) !== isAbove(b.y)) changes.push([a, low], [low, c]);
    else if (low.y.abs().lte(around.times(meeting))) touching.push(low.x);
  }
  return { touching, changes };
}
