import { decimal, type Decimal } from '../../core/number';
import type { SearchRange } from '../../study/searchRange';

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

export const zero = decimal(0);
