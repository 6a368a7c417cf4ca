import { decimal, type Decimal } from '../core/number';
import type { Heights } from './approach';
import { isAbove, type Place } from './bracket';
import type { CloserScan } from './closerScan';

/** What a search between scanned places on one side of the target found. */
export interface Tangencies {
  /** Inputs at which the curve meets the target without a change of side. */
  readonly touching: readonly Decimal[];
  /** Pairs of places with a change of side between two neighbouring scanned places. */
  readonly changes: readonly (readonly [from: Place, to: Place])[];
}

const golden = (Math.sqrt(5) - 1) / 2;
const floatSteps = 45;
const exactSteps = 165;
/**
 * A dip towards the target is computed exactly where, in float64, it comes this near to it, as a share of the heights
 * around it.
 */
const promising = 1e-6;
/** A dip that comes this near to the target, as a share of the heights around it, touches it. */
const meeting = decimal('1e-24');
/**
 * Between places a dip can reach below them by a few times the curve's rise from one place to the next. A place further
 * from the target than that is no candidate.
 */
const deepest = 4;
/** Heights below this are too small for float64 to compare. */
const smallest = 1e-300;
/** Touches this close, as a share of the input, are one. */
const sameTouch = decimal('1e-12');

/** Golden-section search, in float64, for the input at which the curve is nearest to the target. */
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
function lowestExact(height: (x: Decimal) => Decimal, from: Place, to: Place): Place {
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

/** Whether, by the heights in float64, the curve may come nearest to the target around a place. */
function mayDip({ heights }: CloserScan, i: number): boolean {
  const b = heights[i]!;
  const neighbours = [heights[i - 1], heights[i + 1]].filter((y) => y !== undefined);
  if (Number.isNaN(b) || neighbours.some((y) => Number.isNaN(y) || y >= 0 !== b >= 0)) return false;
  const rises = neighbours.map((y) => Math.abs(y) - Math.abs(b));
  const isNear = Math.abs(b) < smallest || rises.some((rise) => Math.abs(b) <= rise * deepest * 2);
  return isNear && rises.every((rise) => rise >= 0);
}

/** Whether a curve that stays on one side of the target may come nearest to it between the neighbours of a place. */
function dips(closer: CloserScan, i: number): boolean {
  if (!mayDip(closer, i)) return false;
  const { y } = closer.place(i);
  const around = [i - 1, i + 1].filter((at) => at in closer.heights).map((at) => closer.place(at).y);
  // Meeting the target at an end of the range, or along a whole stretch, is no touch.
  const staysAtTarget = y.isZero() && (around.length < 2 || around.some((beside) => beside.isZero()));
  const rises = around.map((beside) => beside.abs().minus(y.abs()));
  const isLowest = rises.every((rise) => !rise.isNegative());
  return !staysAtTarget && isLowest && rises.some((rise) => y.abs().lte(rise.times(deepest)));
}

/** Searches for touches and crossings wherever a curve comes near the target between scanned places of one side. */
export function tangencies(closer: CloserScan, { exact, quick }: Heights): Tangencies {
  const touching: Decimal[] = [];
  const changes: [Place, Place][] = [];
  const { heights } = closer;
  heights.forEach((middle, i) => {
    if (!dips(closer, i)) return;
    const [left, right] = [Math.max(i - 1, 0), Math.min(i + 1, heights.length - 1)];
    const around = Math.max(Math.abs(heights[left]!), Math.abs(heights[right]!));
    if (!isPromising(quick, closer.near[left]!, closer.near[right]!, middle >= 0, around)) return;
    const [from, to] = [closer.place(left), closer.place(right)];
    const low = lowestExact(exact, from, to);
    if (low.y.abs().lte(meeting.times(around))) touching.push(low.x);
    else if (isAbove(low.y) !== middle >= 0) changes.push([from, low], [low, to]);
  });
  return { touching: apart(touching), changes };
}

/** Whether, in float64, the curve comes near the target or crosses it between two places of one side. */
function isPromising(quick: (x: number) => number, from: number, to: number, above: boolean, around: number): boolean {
  const near = quick(lowestFloat((x) => Math.abs(quick(x)), from, to));
  return near >= 0 !== above || Math.abs(near) <= promising * around;
}

/** Ascending inputs without repeats: two neighbouring dips may both find one touch. */
function apart(touching: readonly Decimal[]): Decimal[] {
  const isNew = (x: Decimal, before: Decimal): boolean => x.minus(before).abs().gt(x.abs().times(sameTouch));
  return touching.filter((x, i) => i === 0 || isNew(x, touching[i - 1]!));
}
