import { halfAwayFromZero, type Decimal } from '../../core/number';
import type { StepTime } from '../../trade/timeStudy';
import type { Format } from '../text/numberFormat';

/** Significant digits of a time that says nothing of its own spread, and of one that is put into a model. */
const alone = 3;
const put = 4;

/**
 * Decimals that a step's seconds deserve: the half-width of the interval with one significant digit, with two where
 * that digit is 1 or 2, which one digit would round too coarsely; three digits of the seconds where there is no width.
 */
export function secondsDecimals({ secondsPerPlant, spread }: StepTime): number {
  const half = spread?.interval[1].minus(secondsPerPlant);
  if (half === undefined || half.isZero()) return Math.max(0, alone - 1 - secondsPerPlant.e);
  const leads = half.toSignificantDigits(1, halfAwayFromZero);
  const digits = leads.dividedBy(`1e${leads.e}`).lt(3) ? 2 : 1;
  return Math.max(0, digits - 1 - leads.e);
}

/** A batch's own time, with trailing zeros so that a column of them lines up. */
export function ownText(value: Decimal, format: Format): string {
  return format.fixed(value, Math.max(0, put - 1 - value.e));
}

/** A time as it is put into a model: four significant digits. */
export function toPut(value: Decimal): Decimal {
  return value.toSignificantDigits(put, halfAwayFromZero);
}
