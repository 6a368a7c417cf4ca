import { roundStepAbove } from '../../core/roundStep';

/** The bands in which a picture shades a result: each `step` wide, numbered from the level; at the level begins 0. */
export interface HeatBands {
  readonly level: number;
  readonly step: number;
  /** The lowest and the highest band; what lies further out is shaded as they are. */
  readonly first: number;
  readonly last: number;
}

/** Bands that a picture holds at most, apart from part ones at the ends. */
const most = 12;
/** The share of the results at either end that does not decide how far the bands reach: beside a pole they are wild. */
const aside = 0.02;
/** A step will do that falls short of an even part of the results by less than a thousandth. */
const enough = 0.999;

/** Bands over some results, in round steps from a level. */
export function heatBands(values: readonly number[], level: number): HeatBands {
  const sorted = values.filter((value) => Number.isFinite(value)).sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? level;
  const [low, high] = [at(aside), at(1 - aside)];
  const step = roundStepAbove(high > low ? (high - low) / most : Math.abs(low - level) || 1, enough);
  const first = Math.floor((low - level) / step + 1e-9);
  const last = Math.max(first, Math.ceil((high - level) / step - 1e-9) - 1);
  return { level, step, first, last };
}

/** The band of a result. */
export function bandAt({ level, step, first, last }: HeatBands, value: number): number {
  return Math.min(last, Math.max(first, Math.floor((value - level) / step)));
}

/** How strongly a band is shaded, above 0 up to 1: the more the further it is from the level, alike on both sides. */
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

/** Less than this share of the key's width beside the level an end of it has no room for its number. */
const crowded = 0.3;

/** The edges that a key writes: the level where it is between, and the ends unless they are right beside it. */
export function writtenEdges({ first, last }: HeatBands): number[] {
  if (first >= 0 || last < 0) return [first, last + 1];
  const width = last + 1 - first;
  const ends = [first, last + 1].filter((edge) => edge !== 0 && Math.abs(edge) / width >= crowded);
  return [0, ...ends].sort((a, b) => a - b);
}
