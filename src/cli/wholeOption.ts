import { wording } from '../language/wording';
import type { Arguments } from './arguments';
import { UsageError } from './usage';

/** The most draws that one run is asked for. */
export const mostDraws = 10_000_000;

/**
 * A whole number that an option gives; undefined where it is left out.
 * @throws UsageError for anything else
 */
export function wholeOption(
  options: Arguments['options'],
  name: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | undefined {
  const text = options[name];
  if (text === undefined) return undefined;
  const number = Number(text);
  if (/^\d+$/.test(text) && number >= least && number <= most) return number;
  throw new UsageError(wording`--${name} not a whole number from ${least} to ${most}: ${text}.`);
}

/** The number that `--seed` gives; 1 where it is left out. */
export function seedOption(options: Arguments['options']): number {
  return wholeOption(options, 'seed', { least: 0, most: Number.MAX_SAFE_INTEGER }) ?? 1;
}
