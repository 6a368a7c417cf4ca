import { wording } from '../../language/wording';
import type { Format } from './numberFormat';
import { typedCount } from './typedNumber';

/** Limits of a whole number that a person enters. */
export interface WholeLimits {
  readonly least: number;
  readonly most: number;
}

/** The largest is what the engine accepts. */
export const drawLimits: WholeLimits = { least: 1, most: 10_000_000 };
export const seedLimits: WholeLimits = { least: 0, most: Number.MAX_SAFE_INTEGER };

/** A whole number as a person types it, or what is wrong with it. */
export function typedWhole(
  typed: string,
  { least, most }: WholeLimits,
  format: Format,
): { readonly number: number } | { readonly fault: string } {
  const read = typedCount(typed, format);
  if (!('text' in read)) return { fault: read.message };
  const number = Number(read.text);
  if (Number.isInteger(number) && number >= least && number <= most) return { number };
  const [from, to] = [format.written(String(least)), format.written(String(most))];
  return { fault: wording`no whole number from ${from} to ${to}: ${typed.trim()}. Enter one.` };
}
