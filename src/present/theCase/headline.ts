import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { say, type Phrase } from '../text/phrase';
import type { Format } from '../text/numberFormat';
import type { CaseBudget } from './caseOf';
import { spokenAmount } from './sentences';

/** Numbers that differ by less than this share of the larger one differ by rounding alone. */
const sameWithin = decimal('1e-12');

function isSame(a: Decimal, b: Decimal): boolean {
  const larger = a.abs().gt(b.abs()) ? a.abs() : b.abs();
  return a.minus(b).abs().lte(larger.times(sameWithin));
}

/**
 * Compares the budget's net change with the change of the headline in money a year.
 * @param change of the headline, plan less against
 */
export function headlineSentence(made: CaseBudget, headline: Cell, change: Decimal, format: Format): Phrase {
  const { netChange } = made;
  if (netChange.isNaN() || change.isNaN()) return [];
  const name = headline.label;
  if (isSame(change, netChange)) return say`${name} changes by the same.`;
  // A headline that adds up costs rises where the budget's net change is negative.
  if (isSame(change.neg(), netChange)) return say`${name} changes by the same, the other way round.`;
  const gap = spokenAmount(change.minus(netChange).abs(), made, format);
  const by = signed(change, made, format);
  return change.gt(netChange)
    ? say`${name} changes by ${by}, ${gap} more than this budget: it counts entries without a mark in the model’s budget column, or leaves out some that have one.`
    : say`${name} changes by ${by}, ${gap} less than this budget: it counts entries without a mark in the model’s budget column, or leaves out some that have one.`;
}

function signed(value: Decimal, made: CaseBudget, format: Format): string {
  return `${value.gt(0) ? '+' : ''}${spokenAmount(value, made, format)}`;
}
