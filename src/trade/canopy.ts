import type { Arithmetic } from '../core/arithmetic';

/** The arrangement of plants on a board. Staggered: each row is shifted by half a place (equal triangles). */
export type Pattern = 'square' | 'staggered';

/** How the spread of a plant grows, as a logistic curve. Lengths in one unit; the rate per day, above 0. */
export interface Growth<T> {
  /** Spread when it enters. */
  readonly first: T;
  readonly ratePerDay: T;
  /** Spread that it tends to; above the first. */
  readonly last: T;
}

/** The reciprocal yield law of a crop at one density all its life: 1/w = a + b d. */
export interface YieldLaw<T> {
  /** One over the mass of a plant that stands alone. */
  readonly a: T;
  /** One over the most mass that an area yields. */
  readonly b: T;
}

/**
 * The spread at which neighbours touch, which is the distance between them: √(A/d) in a square pattern, √(2A/(√3 d))
 * staggered. Source: geometry; published spacings agree (GPN, Grower 101: Calculations Part IV: Spacing Containers).
 * @param area of one board, in the square of the spread's unit
 * @param density plants per board
 */
export function touchingSpread<T>(m: Arithmetic<T>, area: T, density: T, pattern: Pattern): T {
  const each = m.divide(area, density);
  if (pattern === 'square') return m.squareRoot(each);
  return m.squareRoot(m.divide(m.multiply(m.whole(2), each), m.squareRoot(m.whole(3))));
}

/**
 * Days until a plant has a spread: ln((K/s − 1) / (K/x − 1)) / r, solved from the logistic curve
 * x = K / (1 + (K/s − 1) e^(−rt)) from the first spread s to the last K. 0 where it has it at once; undefined where it
 * never does. NaN where the growth is none: first spread or rate not above 0.
 * Source: the logistic equation (Verhulst 1838, from memory); that field lettuce follows a logistic curve better than
 * an exponential one: sowings of 1973–74, scilit.net 01dce61c.
 */
export function daysToSpread<T>(m: Arithmetic<T>, { first, ratePerDay, last }: Growth<T>, spread: T): T | undefined {
  const isGrowth = m.toNumber(first) > 0 && m.toNumber(ratePerDay) > 0;
  if (!isGrowth || !m.isKnown(last) || !m.isKnown(spread)) return m.whole(NaN);
  if (m.compare(spread, first) <= 0) return m.whole(0);
  if (m.compare(spread, last) >= 0) return undefined;
  const one = m.whole(1);
  const gap = (reached: T): T => m.subtract(m.divide(last, reached), one);
  return m.divide(m.logarithm(m.divide(gap(first), gap(spread))), ratePerDay);
}

/** Days in a stage after its plants touch; 0 where they never do. */
export function crowdedDays<T>(m: Arithmetic<T>, stay: T, touchDay: T | undefined): T {
  return touchDay === undefined ? m.whole(0) : m.larger(m.whole(0), m.subtract(stay, touchDay));
}

/** Share kept of the final mass, price or survival, of which each crowded day takes a fixed share; never below 0. */
export function keptAfterCrowding<T>(m: Arithmetic<T>, crowded: T, lossPerDay: T): T {
  return m.larger(m.whole(0), m.subtract(m.whole(1), m.multiply(crowded, lossPerDay)));
}

/**
 * Mass of a plant at a constant density: 1/(a + b d). For plants that are never re-spaced, not for a crop that is.
 * Source: Shinozaki and Kira as used for lettuce by Scaife and Jones, J. Agric. Sci. (1976), 10.1017/S002185960006500X.
 * @param density plants per area
 */
export function massAtDensity<T>(m: Arithmetic<T>, { a, b }: YieldLaw<T>, density: T): T {
  return m.divide(m.whole(1), m.add(a, m.multiply(b, density)));
}

/** Mass that an area yields at a constant density: d/(a + b d), which tends to 1/b. Source: the same. */
export function yieldAtDensity<T>(m: Arithmetic<T>, law: YieldLaw<T>, density: T): T {
  return m.multiply(density, massAtDensity(m, law, density));
}

/** A trial at a constant density: plants per area, and the mass that one of them came to. */
export interface DensityTrial<T> {
  readonly density: T;
  readonly mass: T;
}

/** The law through two trials; its parts are NaN where both have one density, or where a mass is 0. */
export function lawThrough<T>(m: Arithmetic<T>, first: DensityTrial<T>, second: DensityTrial<T>): YieldLaw<T> {
  const inverse = (mass: T): T => m.divide(m.whole(1), mass);
  const rise = m.subtract(inverse(second.mass), inverse(first.mass));
  const b = m.divide(rise, m.subtract(second.density, first.density));
  return { a: m.subtract(inverse(first.mass), m.multiply(b, first.density)), b };
}
