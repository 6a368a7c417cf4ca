import type { Decimal } from '../core/number';
import { isAbove, type Place } from './bracket';
import { placeAt, type Scan } from './scan';

/**
 * A curve's heights above the target at scanned places. They are exact where float64 cannot tell the side and beside a
 * change of side.
 */
export interface CloserScan {
  /** The places, ascending. */
  readonly near: readonly number[];
  /** The result less the target; 0 and more counts as above. NaN where it cannot be computed. */
  readonly heights: readonly number[];
  /** A place with the exact input and height. */
  readonly place: (i: number) => Place;
  /** Whether the result differs from the target by rounding alone, at every place. */
  readonly isAtTarget: boolean;
}

/** Share of the largest height below which float64 is not trusted to tell the side. */
const doubt = 1e-9;
/** Where every height is below this share of the range's ends and the target, all of them may be float64's rounding. */
const floatNoise = 1e-13;
/** Places computed exactly, some 20 µs each a formula: beyond these, as many of them are left out. */
const mostExact = 400;
/** Exact heights all below this share of these numbers are rounding: the result is at the target. */
const roundingShare = 1e-30;

/** A height in float64 that keeps its sign: 0 only where the height itself is 0. */
function inFloat64(height: Decimal): number {
  const near = height.toNumber();
  if (near !== 0 || height.isZero()) return near;
  return isAbove(height) ? Number.MIN_VALUE : -Number.MIN_VALUE;
}

/**
 * Computes exactly those scanned places at which float64 does not settle the side of the target.
 * @param height the result less the target, exactly
 * @param size the largest absolute number among the ends of the range and the target
 */
export function scanCloser(
  { places, heights, largest }: Scan,
  height: (x: Decimal) => Decimal,
  size: number,
): CloserScan {
  const allNear = largest <= floatNoise * size;
  const turns = (i: number, j: number): boolean =>
    i in heights && j in heights && heights[i]! >= 0 !== heights[j]! >= 0;
  const isUnsure = (y: number, i: number): boolean =>
    allNear || Number.isNaN(y) || Math.abs(y) <= doubt * largest || turns(i - 1, i) || turns(i, i + 1);
  const exactly = new Map<number, Place>();
  const place = (i: number): Place => {
    const known = exactly.get(i);
    if (known !== undefined) return known;
    const x = placeAt(places, i);
    const found = { x, y: height(x) };
    exactly.set(i, found);
    return found;
  };
  const kept = keptOf(heights.map(isUnsure));
  const sure = kept.map((i) => (isUnsure(heights[i]!, i) ? inFloat64(place(i).y) : heights[i]!));
  const isAtTarget = allNear && sure.every((y) => Math.abs(y) <= size * roundingShare);
  return { near: kept.map((i) => places.near[i]!), heights: sure, place: (k) => place(kept[k]!), isAtTarget };
}

/**
 * The scanned places that are kept. Where very many need exact numbers, as where float64 holds none of the heights,
 * some evenly among them are, and those beside a place that needs none.
 */
function keptOf(unsure: readonly boolean[]): number[] {
  const count = unsure.filter(Boolean).length;
  const every = Math.ceil(count / mostExact);
  let seen = 0;
  return unsure.flatMap((is, i) => {
    if (!is) return i;
    seen += 1;
    const isBesideSure = unsure[i - 1] === false || unsure[i + 1] === false;
    return isBesideSure || (seen - 1) % every === 0 || i === unsure.length - 1 ? i : [];
  });
}
