import { halfAwayFromZero, type Decimal } from '../../core/number';
import { minorDigits } from '../../core/unit';
import { say, sentences, type Phrase } from '../text/phrase';
import { space, type Format } from '../text/numberFormat';
import type { CaseBudget, Section } from './caseOf';
import { headings } from './headings';
import { commonTexts } from '../text/commonTexts';

/** Decimals of an amount in a budget: the currency's minor unit (ISO 4217). */
export function budgetDecimals(currency: string): number {
  return minorDigits(currency) ?? 2;
}

/** An amount as a line of the budget. */
export function amount(value: Decimal, currency: string, format: Format): string {
  return value.isNaN() ? commonTexts.noValue : format.fixed(value, budgetDecimals(currency));
}

/** The net change as a line, with its sign. */
export function signedAmount(value: Decimal, { currency, unit }: CaseBudget, format: Format): string {
  return value.isNaN() ? commonTexts.noValue : format.signed(value, unit, budgetDecimals(currency));
}

export function rounded(value: Decimal, decimals: number): Decimal {
  return value.toDecimalPlaces(decimals, halfAwayFromZero);
}

function total(values: readonly Decimal[]): Decimal | undefined {
  const [first, ...rest] = values;
  return first && rest.reduce((sum, value) => sum.plus(value), first);
}

function sectionText({ kind, lines, total: whole }: Section, made: CaseBudget, format: Format): Phrase {
  const decimals = budgetDecimals(made.currency);
  const shown = total(lines.map(({ value }) => rounded(value, decimals)));
  if (shown === undefined || shown.eq(rounded(whole, decimals))) return [];
  const texts = [shown, whole].map((value) => amount(value, made.currency, format));
  return say`The lines of ${headings[kind].heading.toLowerCase()} as shown add up to ${texts[0]!}, their exact sum rounds to ${texts[1]!}.`;
}

function netText(made: CaseBudget, format: Format): Phrase {
  const { currency, netChange, sections } = made;
  const decimals = budgetDecimals(currency);
  const signs = { addedReturns: 1, reducedCosts: 1, addedCosts: -1, reducedReturns: -1 } as const;
  const shown = total(sections.map(({ kind, total: whole }) => rounded(whole, decimals).times(signs[kind])));
  if (shown === undefined || netChange.isNaN() || shown.eq(rounded(netChange, decimals))) return [];
  return say`The four sums as shown come to ${signedAmount(shown, made, format)}, the exact net change rounds to ${signedAmount(netChange, made, format)}.`;
}

/** Where rounded lines do not add up to the sum shown below them; blank where all do. */
export function roundingNote(made: CaseBudget, format: Format): Phrase {
  if (made.unknown.length > 0) return [];
  const each = made.sections.map((section) => sectionText(section, made, format));
  const found = sentences(...each, netText(made, format));
  return found.length === 0 ? [] : sentences(say`Each amount is rounded by itself.`, found);
}

/** An amount of money with its currency, for a sentence. */
export function money(value: Decimal, decimals: number, currency: string, format: Format): string {
  return `${format.fixed(value, decimals)}${space}${currency}`;
}
