import { wordingOf } from '../../language/wording';
import { decimal } from '../../core/number';
import type { Format } from '../text/numberFormat';
import type { CaseBudget, Kind, Section } from './caseOf';
import { signedAmount } from './rounded';

/** The parts whose sums lessen the net change. */
export const lessens: ReadonlySet<Kind> = new Set(['addedCosts', 'reducedReturns']);

/**
 * The sum of a part of the budget, with the sign by which it counts. A word for a part without lines; blank where a
 * line has no value.
 */
export function sectionSum({ kind, lines, total }: Section, made: CaseBudget, format: Format): string {
  if (made.unknown.length > 0) return '';
  if (lines.length === 0) return wordingOf('a part of the budget without lines')`none`;
  return signedAmount(lessens.has(kind) ? decimal(0).minus(total) : total, made, format);
}
