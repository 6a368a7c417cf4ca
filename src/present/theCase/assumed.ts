import { wording } from '../../language/wording';
import type { Switch } from '../whatMatters/switching/switchingInput';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Content } from '../../model/content';
import type { Model } from '../../model/model';
import { sourceOf } from '../../model/sheet';
import { endText } from '../text/rangeEnds';
import type { Format } from '../text/numberFormat';
import { referenceOf } from '../numbers/remarks';
import { turningInputs } from './closest';
import { comparedIn, type ComparedEntry, type PlanPair } from './comparedEntries';

/** A guess on which the case depends. */
export interface Guess {
  readonly cell: Cell;
  readonly value: string;
  /** Low and high; blank where the entry has no range. */
  readonly range: string;
  /** Its source, else its note. */
  readonly from: string;
}

/** At most this many guesses, and decisions, are listed. */
const mostGuesses = 8;
const mostDecisions = 12;

/** Whether a person sets a content by choice: a number, or just the name of another entry. */
function isSet(model: Model, content: Content | undefined): boolean {
  return content?.kind === 'input' || referenceOf(model, content) !== undefined;
}

/** What the two plans set differently, in file order. */
export function decisions(beside: PlanPair): ComparedEntry[] {
  const { model, plans } = beside;
  const [a, b] = plans.map((plan) => model.plans[plan]?.contents ?? []);
  return model.cells
    .filter(({ id }) => a?.[id]?.text !== b?.[id]?.text && isSet(model, a?.[id]) && isSet(model, b?.[id]))
    .slice(0, mostDecisions)
    .map((cell) => comparedIn(beside, cell));
}

function guessOf({ cell, base }: Switch, { sheet }: Model, format: Format): Guess {
  const end = (value: Decimal): string => endText(value, cell, format);
  return {
    cell,
    value: end(base),
    range: cell.range === undefined ? '' : wording`${end(cell.range.low)} to ${end(cell.range.high)}`,
    from: sourceOf(sheet, cell.row) || cell.note || wording`no source given`,
  };
}

/**
 * The guesses with a range at which the answer changes soonest.
 * @param found thinnest margin first
 */
export function guesses(found: readonly Switch[], model: Model, plan: number, format: Format): Guess[] {
  return turningInputs(found, model, plan)
    .filter(({ inRange }) => inRange !== undefined)
    .slice(0, mostGuesses)
    .map((each) => guessOf(each, model, format));
}
