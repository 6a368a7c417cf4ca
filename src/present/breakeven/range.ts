import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Lever } from '../../model/view';
import { isGuess, type SearchRange } from '../../study/searchRange';
import { rangeTexts } from './texts';

/** The range searched, and whether someone has set an end of it. */
export interface ShownRange {
  readonly range: SearchRange;
  readonly own: boolean;
  /** Why the ends that were set cannot be used, in which case the usual range is taken. */
  readonly problem: string | undefined;
}

/**
 * The range to search; an end that is undefined was not set.
 * @param write writes a number of a message
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
  const problem = wording`range without width: from ${write(range.from)} to ${write(range.to)}. Enter a “from” below the “to”.`;
  return { range: usual, own: true, problem };
}

/**
 * A remark on the range that is searched; undefined for none.
 * @param write writes a number of a sentence
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
