import type { Decimal } from '../../../core/number';

/** Numbers that a table shows along an input at most, besides those that it must. */
const most = 9;

/** Some of many places, ascending: the ends, those that must be there, and others evenly between. */
export function thinned(places: readonly Decimal[], must: readonly Decimal[]): Decimal[] {
  const every = Math.max(1, Math.ceil((places.length - 1) / most));
  const last = places.length - 1;
  return places.filter((place, k) => k === last || k % every === 0 || must.some((other) => other.eq(place)));
}
