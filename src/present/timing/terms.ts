import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import { halfWidths } from '../../study/studentT';
import type { Terms } from '../../trade/timeStudy';
import type { Format } from '../text/numberFormat';

export type TermName = 'allowance' | 'within' | 'confidence';
export type AllowanceOf = Terms['allowanceOf'];

/** The terms as a person set them, in per cent. */
export interface TermsEntered extends Readonly<Record<TermName, Decimal>> {
  readonly allowanceOf: AllowanceOf;
}

/** The terms of the study, with those that sentences name. */
export interface TimingTerms {
  readonly terms: Terms;
  readonly confidence: Decimal;
  /** False where the allowance would be the whole day or more, so that there is no standard time. */
  readonly hasStandardTime: boolean;
}

/** The terms in per cent until someone sets others. */
export const usualTerms: Readonly<Record<TermName, Decimal>> = {
  allowance: decimal(15),
  within: decimal(5),
  confidence: decimal(95),
};
const hundred = decimal(100);
/** The highest confidence offered: no published table goes further, and float64 would soon lack the digits. */
const mostConfidence = decimal('99.9999');

/** Whether a number in per cent can be used as a term. */
export function canBe(name: TermName, value: Decimal): boolean {
  if (name === 'allowance') return value.gte(0);
  return value.gt(0) && (name === 'within' || value.lte(mostConfidence));
}

/** What is wrong with a term and how to mend it; undefined where it can be used. */
export function termFault(name: TermName, value: Decimal, format: Format): string | undefined {
  if (canBe(name, value)) return undefined;
  const text = format.full(value);
  if (name === 'allowance') return wording`allowance below 0: ${text}. Give per cent, such as 15.`;
  if (name === 'within') return wording`not above 0: ${text}. Give per cent, such as 5.`;
  return wording`confidence not above 0 and up to ${format.full(mostConfidence)}: ${text}. Give per cent, such as 95.`;
}

/** The terms of the study from those that a person set. */
export function termsOf({ allowance, allowanceOf, within, confidence }: TermsEntered): TimingTerms {
  const outside = hundred.minus(confidence).dividedBy(hundred).toNumber();
  const terms = { allowance, allowanceOf, within, halfWidths: halfWidths(outside) };
  return { terms, confidence, hasStandardTime: allowanceOf === 'job' || allowance.lt(hundred) };
}

/** What an allowance does to a time, as one would key it into a calculator: `× 1.15`, `÷ 0.85`. */
export function allowanceFactor(
  allowance: Decimal,
  of: AllowanceOf,
): { readonly sign: '×' | '÷'; readonly by: Decimal } {
  const share = allowance.dividedBy(hundred);
  return of === 'job' ? { sign: '×', by: share.plus(1) } : { sign: '÷', by: decimal(1).minus(share) };
}
