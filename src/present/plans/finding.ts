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
  if (reference.isNaN()) return [];
  const [apart, name] = [told.between(0, plan), told.name(0)];
  return number.gt(reference)
    ? say`, ${apart} more than in ${name}, the reference`
    : say`, ${apart} less than in ${name}, the reference`;
}

/** Of several plans that are the best. */
function alikeSentence({ row, plans }: Told, best: readonly number[], value: string, way: Better): Phrase {
  const names = listed(
    best.map((plan) => plans[plan] ?? ''),
    mostNamed,
  );
  return way === 'higher'
    ? say`${row.name} is highest in ${names} alike: ${value}.`
    : say`${row.name} is lowest in ${names} alike: ${value}.`;
}

/** Of the reference, the best. */
function referenceSentence(told: Told, way: Better): Phrase {
  const [name, reference, value] = [told.row.name, told.name(0), told.value(0)];
  return way === 'higher'
    ? say`${name} is highest in ${reference}, the reference: ${value}.`
    : say`${name} is lowest in ${reference}, the reference: ${value}.`;
}

function judgedSentence(told: Told, way: Better): Phrase {
  const { row } = told;
  const best = [...bestAmong(told.numbers, way)];
  const [first = 0] = best;
  if (best.length === 0) {
    const known = told.numbers.findIndex((number) => number.isFinite());
    return say`${row.name} is the same in every plan that has a value: ${told.value(known)}.`;
  }
  const value = told.value(first);
  if (best.length > 1) return alikeSentence(told, best, value, way);
  if (first === 0) return referenceSentence(told, way);
  const [name, against] = [told.name(first), againstReference(told, first)];
  return way === 'higher'
    ? say`${row.name} is highest in ${name}: ${value}${against}.`
    : say`${row.name} is lowest in ${name}: ${value}${against}.`;
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
