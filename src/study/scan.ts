import { decimal, type Decimal } from '../core/number';
import type { Curve } from './curve';
import type { SearchRange } from './searchRange';

/** Number of evenly spaced places of a first scan; places by ratio are added to them. */
const evenly = 2000;
const byRatio = 400;
/** Decades from the range's end towards 0 that the places by ratio cover. */
const decades = 8;

/** The heights of a curve at the scanned inputs. */
export interface Scan {
  readonly places: Places;
  /** The result less the target, in float64; NaN where it cannot be computed. */
  readonly heights: readonly number[];
  /** The largest absolute height. */
  readonly largest: number;
}

/** The inputs to scan, ascending and without repeats. */
export interface Places {
  readonly near: readonly number[];
  /** The given inputs and both ends with all their digits, each by the number in `near` that stands for it. */
  readonly given: ReadonlyMap<number, Decimal>;
}

/** A scanned input with all its digits. */
export function placeAt({ near, given }: Places, i: number): Decimal {
  const x = near[i]!;
  return given.get(x) ?? decimal(x);
}

/** Numbers in geometric steps from a small to a large one of the same sign. */
function ratioSteps(from: number, to: number): number[] {
  const near = Math.max(from, to * 10 ** -decades);
  if (!(to > near)) return [];
  return Array.from({ length: byRatio + 1 }, (_, k) => near * (to / near) ** (k / byRatio));
}

/** A number rounded to 15 digits, as people would write it. */
function tidy(x: number): number {
  return Number(x.toPrecision(15));
}

/** The inputs to scan: even steps, steps by ratio on either side of 0, the given ones, and both ends. */
export function placesIn({ from, to }: SearchRange, given: readonly Decimal[]): Places {
  const [low, high] = [from.toNumber(), to.toNumber()];
  const step = (high - low) / evenly;
  const closer = [
    ...Array.from({ length: evenly }, (_, k) => low + step * k),
    ...ratioSteps(Math.max(low, 0), high),
    ...ratioSteps(Math.max(-high, 0), -low).map((size) => -size),
  ].map(tidy);
  const known = [from, ...given.filter((x) => x.gt(from) && x.lt(to)), to];
  const exactly = new Map(known.map((x) => [x.toNumber(), x]));
  const inside = [...closer.filter((x) => x > low && x < high), ...exactly.keys()].sort((a, b) => a - b);
  return { near: inside.filter((x, i) => x !== inside[i - 1]), given: exactly };
}

/** Computes a curve over a range in float64. */
export function scanCurve(curve: Curve, range: SearchRange, target: number, given: readonly Decimal[]): Scan {
  const places = placesIn(range, given);
  const heights = places.near.map((x) => curve.float(x) - target);
  const sizes = heights.filter((height) => Number.isFinite(height)).map(Math.abs);
  const largest = sizes.reduce((most, size) => Math.max(most, size), 0);
  return { places, heights, largest };
}
