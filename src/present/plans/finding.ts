import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import { betterWay, type Better } from '../../trade/betterWay';
import type { Format } from '../text/numberFormat';
import { listed, plainly, say, type Phrase } from '../text/phrase';
import { spokenWithUnit } from '../text/spokenNumber';
import { bestAmong, type ResultRow } from './sideBySide';

/** Plans that are named where several are the best. */
const mostNamed = 3;

/** The row that the finding speaks of: the result asked about, else the first that can be better or worse. */
function leading(rows: readonly ResultRow[], asked: string): ResultRow | undefined {
  const numeric = rows.filter(({ numbers }) => numbers !== undefined);
  const judged = numeric.filter(({ cell }) => betterWay(cell) !== undefined);
  return judged.find(({ cell }) => cell.name === asked) ?? judged[0] ?? numeric[0];
}

/** A row with the names of the plans, and what else sentences need. */
class Told {
  readonly numbers: readonly Decimal[];

  constructor(
    readonly row: ResultRow,
    readonly plans: readonly string[],
    readonly format: Format,
  ) {
    this.numbers = row.numbers ?? [];
  }

  value(plan: number): string {
    return spokenWithUnit(this.row.values[plan]?.text ?? '', this.row.cell.unitText);
  }

  name(plan: number): string {
    return this.plans[plan] ?? '';
  }

  /** How far a plan lies from another, without a sign. */
  between(from: number, to: number): string {
    const { unit, unitText } = this.row.cell;
    const text = this.format.difference(this.numbers[from]!, this.numbers[to]!, unit);
    return spokenWithUnit(text.replace(/^[+\u2212]/, ''), unitText);
  }
}

function againstReference(told: Told, plan: number): Phrase {
  const [reference, number] = [told.numbers[0]!, told.numbers[plan]!];
  if (plan === 0) return plainly(wording`, the reference`);
  if (reference.isNaN()) return [];
  const word = plainly(number.gt(reference) ? wording` more` : wording` less`);
  return say`, ${told.between(0, plan)}${word} than in ${told.name(0)}, the reference`;
}

function judgedSentence(told: Told, way: Better): Phrase {
  const { row, plans } = told;
  const best = [...bestAmong(told.numbers, way)];
  const [first = 0] = best;
  const word = plainly(way === 'higher' ? 'highest' : 'lowest');
  if (best.length === 0) {
    const known = told.numbers.findIndex((number) => number.isFinite());
    return say`${row.name} is the same in every plan that has a value: ${told.value(known)}.`;
  }
  if (best.length > 1) {
    const names = listed(
      best.map((plan) => plans[plan] ?? ''),
      mostNamed,
    );
    return say`${row.name} is ${word} in ${names} alike: ${told.value(first)}.`;
  }
  if (first === 0) return say`${row.name} is ${word} in ${told.name(0)}, the reference: ${told.value(0)}.`;
  return say`${row.name} is ${word} in ${told.name(first)}: ${told.value(first)}${againstReference(told, first)}.`;
}

/** Of a result of which nobody knows whether more of it is better. */
function spanSentence(told: Told): Phrase {
  const [high] = bestAmong(told.numbers, 'higher');
  const [low] = bestAmong(told.numbers, 'lower');
  if (high === undefined || low === undefined) {
    const known = told.numbers.findIndex((number) => number.isFinite());
    return say`${told.row.name} is the same in every plan that has a value: ${told.value(known)}.`;
  }
  return say`${told.row.name} goes from ${told.value(low)} in ${told.name(low)} to ${told.value(high)} in ${told.name(high)}.`;
}

/** What the plans side by side show. @param asked name of the result that is asked about elsewhere */
export function plansFinding(
  rows: readonly ResultRow[],
  plans: readonly string[],
  asked: string,
  format: Format,
): Phrase {
  if (plans.length < 2) {
    return plainly(
      wording`There is one plan so far. Copy it, change one thing in the copy, and both stand side by side here.`,
    );
  }
  const row = leading(rows, asked);
  if (row?.numbers === undefined) return plainly(wording`There is no number yet by which the plans could be compared.`);
  const told = new Told(row, plans, format);
  if (row.numbers.every((number) => number.isNaN())) return say`${row.name} cannot be computed in any plan today.`;
  const way = betterWay(row.cell);
  return way === undefined ? spanSentence(told) : judgedSentence(told, way);
}
