import { decimal, type Decimal } from '../../core/number';
import type { Lever } from '../../model/view';
import { isGuess, type SearchRange } from '../../study/searchRange';
import { rangeTexts } from './texts';

/** The range that is looked at, and whether someone has set an end of it. */
export interface ShownRange {
  readonly range: SearchRange;
  readonly own: boolean;
  /** Why the ends that were set cannot be used; the usual range stands then. */
  readonly problem: string | undefined;
}

/**
 * The range from what was set, undefined for what was not.
 * @param write how a message writes a number
 */
export function shownRange(
  usual: SearchRange,
  from: Decimal | undefined,
  to: Decimal | undefined,
  write: (value: Decimal) => string,
): ShownRange {
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
  { range: { from, to }, own }: ShownRange,
  write: (value: Decimal) => string,
): string | undefined {
  const { base } = lever;
  if (!own && isGuess(lever)) return rangeTexts.guess;
  if (base.gte(from) && base.lte(to)) return undefined;
  return rangeTexts.todayOutside(write(base));
}

export const zero = decimal(0);
