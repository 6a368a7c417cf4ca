import { halfAwayFromZero, type Decimal } from '../../core/number';
import type { StepTime } from '../../trade/timeStudy';
import type { Format } from '../text/numberFormat';

/** Significant digits of a time without a spread, and of a time that is entered into a model. */
const alone = 3;
const put = 4;
/** Digits beyond these say nothing, however closely batches agree. */
const most = 6;

/**
 * Decimals of a step's seconds: those with which the half-width of the interval has one significant digit, or two where
 * the first is 1 or 2. Where there is no half-width, those for three digits of the seconds.
 */
export function secondsDecimals({ secondsPerPlant, spread }: StepTime): number {
  return decimalsBy(secondsPerPlant, spread?.interval[1].minus(secondsPerPlant));
}

/** Decimals of a number by the half-width of its interval, six digits of it at most; three where there is none. */
export function decimalsBy(value: Decimal, half: Decimal | undefined): number {
  if (half === undefined || half.isZero()) return Math.max(0, alone - 1 - value.e);
  const leads = half.toSignificantDigits(1, halfAwayFromZero);
  const digits = leads.dividedBy(`1e${leads.e}`).lt(3) ? 2 : 1;
  return Math.max(0, Math.min(digits - 1 - leads.e, most - 1 - value.e));
}

/** The seconds per plant of a single batch, with trailing zeros so that a column of them is aligned. */
export function ownText(value: Decimal, format: Format): string {
  return format.fixed(value, Math.max(0, put - 1 - value.e));
}

/** A time as it is entered into a model: with four significant digits. */
export function toPut(value: Decimal): Decimal {
  return value.toSignificantDigits(put, halfAwayFromZero);
}
