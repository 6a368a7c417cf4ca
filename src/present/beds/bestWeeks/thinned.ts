import type { Decimal } from '../../../core/number';

/** At most this many numbers along an input in a table, besides the required ones. */
const most = 9;

/** A selection of ascending numbers: both ends, the required ones, and others evenly between. */
export function thinned(places: readonly Decimal[], must: readonly Decimal[]): Decimal[] {
  const every = Math.max(1, Math.ceil((places.length - 1) / most));
  const last = places.length - 1;
  return places.filter((place, k) => k === last || k % every === 0 || must.some((other) => other.eq(place)));
}
