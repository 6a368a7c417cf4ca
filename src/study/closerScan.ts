import type { Decimal } from '../core/number';
import { isAbove, type Place } from './bracket';
import { placeAt, type Scan } from './scan';

/** A curve's heights above the target at scanned places: exact where float64 is in doubt or finds a change of side. */
export interface CloserScan {
  /** The places, ascending. */
  readonly near: readonly number[];
  /** Above or at the target where not below 0; NaN where there is none. */
  readonly heights: readonly number[];
  /** A place with its height in all their digits. */
  readonly place: (i: number) => Place;
  /** Whether nothing but rounding parts the result from the target, at every place. */
  readonly isAtTarget: boolean;
}

/** A share of the largest height below which float64 is not trusted to tell the side. */
const doubt = 1e-9;
/** A share of the numbers looked at below which all that float64 sees may be its own rounding. */
const floatNoise = 1e-13;
/** Results all this small beside the numbers they come from are rounding of a result that is at the target. */
const roundingShare = 1e-30;

/** The number nearest to a height that is 0 only where the height is, and on its side of 0. */
function inFloat64(height: Decimal): number {
  const near = height.toNumber();
  if (near !== 0 || height.isZero()) return near;
  return isAbove(height) ? Number.MIN_VALUE : -Number.MIN_VALUE;
}

/**
 * Looks once more, exactly, at the scanned places of which float64 does not know enough.
 * @param height the result less the target, exactly
 * @param size the largest of the numbers looked at
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
  const sure = heights.map((y, i) => (isUnsure(y, i) ? inFloat64(place(i).y) : y));
  const isAtTarget = allNear && sure.every((y) => Math.abs(y) <= size * roundingShare);
  return { near: places.near, heights: sure, place, isAtTarget };
}
