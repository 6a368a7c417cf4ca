import { wording } from '../../language/wording';
import { decimal, halfAwayFromZero, type Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { inPerCent } from '../text/inPerCent';
import { spokenWithUnit } from '../text/spokenNumber';
import type { Format } from '../text/numberFormat';

/** A step of a power of ten. */
export interface RoundingStep {
  readonly exponent: number;
}

/**
 * The step to which figures of a spread of this width are rounded: about a hundredth of it, which is more than chance
 * moves them.
 */
export function stepFor(width: number): RoundingStep {
  return { exponent: width > 0 ? Math.floor(Math.log10(width / 100)) : 0 };
}

export function finer({ exponent }: RoundingStep): RoundingStep {
  return { exponent: exponent - 1 };
}

function rounded(value: number, { exponent }: RoundingStep): Decimal {
  const step = decimal(`1e${exponent}`);
  return decimal(value).dividedBy(step).toDecimalPlaces(0, halfAwayFromZero).times(step);
}

/** A number rounded to a step. */
export function inSteps(value: number, step: RoundingStep, format: Format): string {
  return format.fixed(rounded(value, step), Math.max(0, -step.exponent));
}

/** The same with the unit as in a sentence. */
export function spokenInSteps(value: number, step: RoundingStep, unit: Unit | undefined, format: Format): string {
  return spokenWithUnit(inSteps(value, step, format), unit?.text ?? '');
}

/** An error with one significant digit, or two where the first is 1. */
export function errorText(error: number, format: Format): string {
  if (!(error > 0)) return '0';
  const power = Math.floor(Math.log10(error));
  const digits = error / 10 ** power < 2 ? 1 : 0;
  return inSteps(error, { exponent: power - digits }, format);
}

/** A share of the draws as a number of 100 draws, in words. */
export function ofHundred(share: number): string {
  if (share <= 0) return wording`no draw`;
  if (share >= 1) return wording`every draw`;
  if (share < 0.005) return wording`fewer than 1 of 100 draws`;
  if (share >= 0.995) return wording`more than 99 of 100 draws`;
  return wording`${Math.round(share * 100)} of 100 draws`;
}

/** A share in whole per cent, as the locale writes them: no finer than half a per cent is worth telling. */
export function percentText(share: number, format: Format): string {
  const percent = share * 100;
  if (percent > 0 && percent < 0.5) return wording`below ${inPerCent('1')}`;
  return inPerCent(format.fixed(decimal(percent), 0));
}
