import { roundStepAbove } from '../../core/roundStep';

/** The bands in which a heat picture shades a result. Each is `step` wide; band k begins at level + k × step. */
export interface HeatBands {
  readonly level: number;
  readonly step: number;
  /** The lowest and the highest band. A result beyond them is shaded as the nearer one. */
  readonly first: number;
  readonly last: number;
}

/** At most this many whole bands; bands cut off at the ends may come on top. */
const most = 12;
/**
 * The lowest and the highest results by this share are ignored in choosing the bands, as they may be extreme beside a
 * pole.
 */
const aside = 0.02;
/** A step may be smaller than an even part of the results by less than a thousandth. */
const enough = 0.999;

/** Bands for some results, in round steps from a level. */
export function heatBands(values: readonly number[], level: number): HeatBands {
  const sorted = values.filter((value) => Number.isFinite(value)).sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? level;
  const [low, high] = [at(aside), at(1 - aside)];
  const step = roundStepAbove(high > low ? (high - low) / most : Math.abs(low - level) || 1, enough);
  const first = Math.floor((low - level) / step + 1e-9);
  const last = Math.max(first, Math.ceil((high - level) / step - 1e-9) - 1);
  return { level, step, first, last };
}

/** The number of the band that a result is in. */
export function bandAt({ level, step, first, last }: HeatBands, value: number): number {
  return Math.min(last, Math.max(first, Math.floor((value - level) / step)));
}

/**
 * How strongly a band is shaded, above 0 up to 1: in proportion to its distance from the level, the same above and
 * below.
 */
export function strengthOf({ first, last }: HeatBands, band: number): number {
  const [nearAbove, nearBelow] = [Math.max(first, 0), Math.min(last, -1)];
  const longest = Math.max(last - nearAbove, nearBelow - first) + 1;
  return ((band >= 0 ? band - nearAbove : nearBelow - band) + 1) / longest;
}

/** The bands from the lowest to the highest. */
export function listedBands({ first, last }: HeatBands): number[] {
  return Array.from({ length: last - first + 1 }, (_, k) => first + k);
}

/** Where a band begins. */
export function startOf({ level, step }: HeatBands, band: number): number {
  return level + band * step;
}

/** An end of the key gets no number where it is closer to the level than this share of the key's width. */
const crowded = 0.3;

/** The edges that the key labels: the level where it lies inside, and the ends that are far enough from it. */
export function writtenEdges({ first, last }: HeatBands): number[] {
  if (first >= 0 || last < 0) return [first, last + 1];
  const width = last + 1 - first;
  const ends = [first, last + 1].filter((edge) => edge !== 0 && Math.abs(edge) / width >= crowded);
  return [0, ...ends].sort((a, b) => a - b);
}
