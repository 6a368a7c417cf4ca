import type { Decimal } from '../../core/number';
import { exactStepBelow } from '../../core/roundStep';
import type { Range } from '../../model/cell';

/** Steps of a range for which the model gives no step, approximately. */
const usualSteps = 100;
/** Steps that a page key moves. */
export const pageSteps = 10;

/**
 * The step of a range: the model's own, else the round step (1, 2 or 5 times a power of ten) next below a hundredth of
 * it.
 */
export function rangeStep({ low, high }: Range, step: Decimal | undefined): Decimal {
  return step ?? exactStepBelow(high.minus(low).dividedBy(usualSteps));
}

function within({ low, high }: Range, value: Decimal): Decimal {
  if (value.lt(low)) return low;
  return value.gt(high) ? high : value;
}

/** A value moved by some steps, stopping at the ends. */
export function moved(range: Range, value: Decimal, step: Decimal, steps: number): Decimal {
  return within(range, value.plus(step.times(steps)));
}

/** The value at a share of the range, 0 at its low end and 1 at its high end, rounded to whole steps. */
export function valueAt(range: Range, step: Decimal, share: number): Decimal {
  const { low, high } = range;
  if (share <= 0) return low;
  if (share >= 1) return high;
  const exact = low.plus(high.minus(low).times(Number(share.toFixed(6))));
  return within(range, exact.dividedBy(step).round().times(step));
}

/** Where a value stands in its range, 0 to 1; one outside stands at the nearer end. */
export function rangeShare(range: Range, value: Decimal): number {
  const width = range.high.minus(range.low);
  return width.isZero() ? 0.5 : within(range, value).minus(range.low).dividedBy(width).toNumber();
}

/** Whether a value lies outside its range. */
export function isOutside({ low, high }: Range, value: Decimal): boolean {
  return value.lt(low) || value.gt(high);
}
