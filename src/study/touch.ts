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
const exactSteps = 165;
/** A dip is looked at exactly where float64 sees it come this near to the target, as a share of its surroundings. */
const promising = 1e-6;
/** A dip that comes this near to the target meets it. */
const meeting = decimal('1e-24');
/** A dip between places reaches no further below them than a few times what the curve rises from place to place. */
const deepest = 4;
/** Two touches this near are one. */
const sameTouch = decimal('1e-12');

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

/** Whether a curve on one side of the target may come nearest to it between two of three neighbouring places. */
function dips(a: Place | undefined, b: Place, c: Place | undefined, isAbove: IsAbove): boolean {
  const neighbours = [a, c].filter((place) => place !== undefined);
  if (b.y.isNaN() || neighbours.some(({ y }) => y.isNaN() || isAbove(y) !== isAbove(b.y))) return false;
  // Met at an end of the range, or along a whole stretch, the target is not touched.
  const staysAtTarget = b.y.isZero() && (neighbours.length < 2 || neighbours.some(({ y }) => y.isZero()));
  const rises = neighbours.map(({ y }) => y.abs().minus(b.y.abs()));
  const isLowest = rises.every((rise) => !rise.isNegative());
  return !staysAtTarget && isLowest && rises.some((rise) => b.y.abs().lte(rise.times(deepest)));
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
  places.forEach((middle, i) => {
    if (!dips(places[i - 1], middle, places[i + 1], isAbove)) return;
    const [from, to] = [places[i - 1] ?? middle, places[i + 1] ?? middle];
    const around = larger(from.y.abs(), to.y.abs());
    if (!isPromising(quick, from, to, around, isAbove)) return;
    const low = lowestExact(height, from, to, isAbove);
    if (low.y.abs().lte(around.times(meeting))) touching.push(low.x);
    else if (isAbove(low.y) !== isAbove(middle.y)) changes.push([from, low], [low, to]);
  });
  return { touching: apart(touching), changes };
}

/** Whether float64 sees the curve come near the target, or cross it, between two places. */
function isPromising(quick: (x: number) => number, from: Place, to: Place, around: Decimal, isAbove: IsAbove): boolean {
  const near = quick(lowestFloat((x) => Math.abs(quick(x)), from.x.toNumber(), to.x.toNumber()));
  return isAbove(decimal(near)) !== isAbove(from.y) || Math.abs(near) <= promising * around.toNumber();
}

/** Ascending inputs with those left out that two neighbouring dips both found. */
function apart(touching: readonly Decimal[]): Decimal[] {
  const isNew = (x: Decimal, before: Decimal): boolean => x.minus(before).abs().gt(x.abs().times(sameTouch));
  return touching.filter((x, i) => i === 0 || isNew(x, touching[i - 1]!));
}

function larger(a: Decimal, b: Decimal): Decimal {
  return a.gt(b) ? a : b;
}
