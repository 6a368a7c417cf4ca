import { decimal, type Decimal } from '../../core/number';
import { isNumber, readNumber } from '../../model/readNumber';
import type { Lever } from '../../model/view';
import { isGuess, type SearchRange } from '../../study/searchRange';

/** The range that is looked at, and whether someone has set an end of it. */
export interface LookedAt {
  readonly range: SearchRange;
  readonly own: boolean;
  /** Why the ends that were set cannot be used; the usual range stands then. */
  readonly problem: string | undefined;
}

/** A number as it was kept, or undefined for none. */
export function keptNumber(text: string): Decimal | undefined {
  if (text === '') return undefined;
  const read = readNumber(text);
  return isNumber(read) ? read : undefined;
}

/**
 * The range from what was set, blank for what was not.
 * @param write how a message writes a number
 */
export function lookedAt(
  usual: SearchRange,
  fromText: string,
  toText: string,
  write: (value: Decimal) => string,
): LookedAt {
  const [from, to] = [keptNumber(fromText), keptNumber(toText)];
  if (from === undefined && to === undefined) return { range: usual, own: false, problem: undefined };
  const range = { from: from ?? usual.from, to: to ?? usual.to };
  if (range.from.lt(range.to)) return { range, own: true, problem: undefined };
  const problem = `range without width: from ${write(range.from)} to ${write(range.to)}. Enter a “from” below the “to”.`;
  return { range: usual, own: true, problem };
}

/**
 * What else is to be known of the range that is looked at.
 * @param write how a sentence writes a number
 */
export function remarkOn(
  lever: Lever,
  { range: { from, to }, own }: LookedAt,
  write: (value: Decimal) => string,
): string | undefined {
  const { base } = lever;
  if (!own && isGuess(lever))
    return 'This range is a guess: today’s 0 has no range of its own. Enter the ends that you mean.';
  if (base.gte(from) && base.lte(to)) return undefined;
  return `Today’s ${write(base)} lies outside: the picture reaches to it, the answer does not.`;
}

export const zero = decimal(0);
