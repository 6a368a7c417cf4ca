import { decimal, type Decimal } from '../../core/number';
import { halfWidths } from '../../study/studentT';
import type { Terms } from '../../trade/timeStudy';
import type { Format } from '../text/numberFormat';

export type TermName = 'allowance' | 'within' | 'confidence';
export type AllowanceOf = Terms['allowanceOf'];

/** The terms as someone set them, in per cent. */
export interface TermsEntered extends Readonly<Record<TermName, Decimal>> {
  readonly allowanceOf: AllowanceOf;
}

/** The terms that stand, and what they are as numbers that people read. */
export interface TimingTerms {
  readonly terms: Terms;
  readonly confidence: Decimal;
  /** False where the allowance would be the whole day: there is no standard time then. */
  readonly hasStandardTime: boolean;
}

/** In per cent, until others are set. */
export const usualTerms: Readonly<Record<TermName, Decimal>> = {
  allowance: decimal(15),
  within: decimal(5),
  confidence: decimal(95),
};
const hundred = decimal(100);
/** Beyond it the tables of nobody go, and float64 soon has no digits. */
const mostConfidence = decimal('99.9999');

/** Whether a number of per cent can be used as a term. */
export function canBe(name: TermName, value: Decimal): boolean {
  if (name === 'allowance') return value.gte(0);
  return value.gt(0) && (name === 'within' || value.lte(mostConfidence));
}

/** What is wrong with a term, and what would mend it; undefined: nothing. */
export function termFault(name: TermName, value: Decimal, format: Format): string | undefined {
  if (canBe(name, value)) return undefined;
  const text = format.full(value);
  if (name === 'allowance') return `allowance below 0: ${text}. Give per cent, such as 15.`;
  if (name === 'within') return `not above 0: ${text}. Give per cent, such as 5.`;
  return `confidence not above 0 and up to ${format.full(mostConfidence)}: ${text}. Give per cent, such as 95.`;
}

/** The terms that are set. */
export function termsOf({ allowance, allowanceOf, within, confidence }: TermsEntered): TimingTerms {
  const outside = hundred.minus(confidence).dividedBy(hundred).toNumber();
  const terms = { allowance, allowanceOf, within, halfWidths: halfWidths(outside) };
  return { terms, confidence, hasStandardTime: allowanceOf === 'job' || allowance.lt(hundred) };
}

/** What an allowance does to a time, as a person would key it in: `× 1.15`, `÷ 0.85`. */
export function allowanceFactor(
  allowance: Decimal,
  of: AllowanceOf,
): { readonly sign: '×' | '÷'; readonly by: Decimal } {
  const share = allowance.dividedBy(hundred);
  return of === 'job' ? { sign: '×', by: share.plus(1) } : { sign: '÷', by: decimal(1).minus(share) };
}
