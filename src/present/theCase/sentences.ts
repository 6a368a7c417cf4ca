import type { Decimal } from '../../core/number';
import { decimalsFor } from '../text/digits';
import { listed, plainly, say, type Phrase } from '../text/phrase';
import { spokenUnit } from '../text/spokenNumber';
import { space, type Format } from '../text/numberFormat';
import type { CaseBudget, Unknown } from './caseOf';
import { budgetDecimals, money, rounded } from './rounded';

/** The plans of a case by name. */
export interface Names {
  readonly plan: string;
  readonly against: string;
}

/** At most this many names in a list; of more, the number. */
const mostNames = 5;

/** Decimals with which the three amounts of the sentence add up as shown; undefined where there are none. */
function sentenceDecimals({ netChange, takenIn, spent, unit, currency }: CaseBudget): number {
  const largest = [netChange, takenIn, spent].reduce((a, b) => (b.abs().gt(a.abs()) ? b : a));
  const coarse = decimalsFor(netChange.isZero() ? largest : netChange, unit);
  const isWhole = rounded(takenIn, coarse).minus(rounded(spent, coarse)).eq(rounded(netChange, coarse));
  return isWhole ? coarse : budgetDecimals(currency);
}

function takenInClause(value: Decimal, amount: string): Phrase {
  if (value.isZero()) return say`as much is taken in`;
  return value.gt(0) ? say`${amount} more is taken in` : say`${amount} less is taken in`;
}

function spentClause(value: Decimal, amount: string): Phrase {
  if (value.isZero()) return say`as much is spent`;
  return value.gt(0) ? say`${amount} more is spent` : say`${amount} less is spent`;
}

/** The budget's unit after the currency, as a sentence says it: `a year`. */
function period({ unit, currency }: CaseBudget): string {
  return spokenUnit(unit.text, false).replaceAll(space, ' ').replace(currency, '').trim();
}

/** An amount of the budget as a sentence says it, `3,840 EUR a year`. */
export function spokenAmount(value: Decimal, made: CaseBudget, format: Format): string {
  return [money(value, decimalsFor(value, made.unit), made.currency, format), period(made).replaceAll(' ', space)]
    .filter(Boolean)
    .join(space);
}

/** The net change, in one sentence. */
export function caseSentence(made: CaseBudget, { plan, against }: Names, format: Format): Phrase {
  const { netChange, takenIn, spent, currency } = made;
  if (netChange.isNaN()) return say`What ${plan} in place of ${against} comes to cannot be computed today.`;
  if (takenIn.isZero() && spent.isZero()) {
    return say`${plan} in place of ${against} changes nothing in the year’s money: as much is taken in, and as much is spent.`;
  }
  const decimals = sentenceDecimals(made);
  const text = (value: Decimal): string => money(value.abs(), decimals, currency, format);
  const parts = say`${takenInClause(takenIn, text(takenIn))}, ${spentClause(spent, text(spent))}`;
  if (netChange.isZero()) return say`${plan} in place of ${against} comes to the same: ${parts}.`;
  const [net, time] = [text(netChange), plainly(` ${period(made)}`)];
  return netChange.gt(0)
    ? say`${plan} in place of ${against} adds ${net}${time}: ${parts}.`
    : say`${plan} in place of ${against} loses ${net}${time}: ${parts}.`;
}

/** Why a line has no value. */
export function unknownSentence({ cell, plans, error }: Unknown, nameOf: (plan: number) => string): Phrase {
  return say`${cell.label} has no value in ${listed(plans.map(nameOf))}: ${plainly(error.message)}`;
}

/** Which lines are left out as they are the same in both plans. */
export function unchangedSentence({ unchanged }: CaseBudget): Phrase {
  const names = listed(
    unchanged.map(({ label }) => label),
    mostNames,
  );
  return unchanged.length === 0 ? [] : say`Left out, as the same in both plans: ${names}.`;
}
