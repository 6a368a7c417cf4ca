import { wordingOf } from '../../language/wording';
import type { Decimal } from '../../core/number';
import { isQuantity, type Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import { cellNamed, givesTruth, type Model } from '../../model/model';
import type { Values } from '../../model/values';
import { betterWay, type Better } from '../../trade/betterWay';
import { figure, type DataCell, type DataTable } from '../table/dataTable';
import { commonTexts } from '../text/commonTexts';
import { entryTexts } from '../numbers/entryTexts';
import type { Format } from '../text/numberFormat';
import { printedUnit } from '../text/printedUnit';
import { truthWord } from '../text/truthWord';
import { plansTexts } from './texts';

/** All plans of a model with what they come to today. */
export interface AllPlans {
  readonly model: Model;
  /** By plan. */
  readonly values: readonly Values[];
  readonly nameOf: (cell: Cell) => string;
  readonly format: Format;
}

/** A result in one plan. */
export interface PlanValue {
  readonly text: string;
  /** How far it lies from the reference; blank for the reference, and where there is nothing to compare. */
  readonly difference: string;
  /** `most` or `least` where it is the best of its row; else blank. */
  readonly best: string;
}

/** A result in every plan. */
export interface ResultRow {
  readonly cell: Cell;
  readonly name: string;
  readonly unit: string;
  readonly values: readonly PlanValue[];
  /** Its numbers, NaN where a plan has none; undefined where it is words rather than numbers. */
  readonly numbers: readonly Decimal[] | undefined;
}

/** The results that stand side by side: the headlines, or without any the one that is asked about. */
export function comparedResults(model: Model, asked: string): Cell[] {
  const headlines = model.cells.filter(({ role }) => role === 'headline');
  return headlines.length > 0 ? headlines : [cellNamed(model, asked)].filter((cell) => cell !== undefined);
}

/** The plans whose number is the best, none where all that have one are alike. */
export function bestAmong(numbers: readonly Decimal[], way: Better): ReadonlySet<number> {
  const known = numbers.filter((number) => number.isFinite());
  const better = (a: Decimal, b: Decimal): boolean => (way === 'higher' ? a.gt(b) : a.lt(b));
  const best = known.reduce<Decimal | undefined>((one, other) => (one && !better(other, one) ? one : other), undefined);
  if (best === undefined || known.every((number) => number.eq(best))) return new Set();
  return new Set(numbers.flatMap((number, plan) => (number.eq(best) ? [plan] : [])));
}

const bestWords: Readonly<Record<Better, string>> = {
  higher: wordingOf('the best of a row')`most`,
  lower: wordingOf('the best of a row')`least`,
};

function rowOf({ model, values, nameOf, format }: AllPlans, cell: Cell): ResultRow {
  const isTruth = model.plans.some((plan) => givesTruth(plan, cell.id));
  const isWords = isTruth || !isQuantity(cell);
  const numbers = model.plans.map((_plan, p) => values[p]!.numbers[cell.id]!);
  const way = isWords ? undefined : betterWay(cell);
  const best = way === undefined ? new Set<number>() : bestAmong(numbers, way);
  const textOf = (number: Decimal): string => {
    if (number.isNaN()) return entryTexts.noValue;
    if (isTruth) return truthWord(cell, !number.isZero());
    return wordsOf(cell, number) ?? format.value(number, cell.unit);
  };
  const reference = numbers[0]!;
  const differenceOf = (number: Decimal, plan: number): string => {
    if (plan === 0 || isWords || number.isNaN() || reference.isNaN()) return '';
    return number.eq(reference) ? entryTexts.same : format.difference(reference, number, cell.unit);
  };
  return {
    cell,
    name: nameOf(cell),
    unit: printedUnit(cell.unitText),
    values: numbers.map((number, plan) => ({
      text: textOf(number),
      difference: differenceOf(number, plan),
      best: best.has(plan) ? bestWords[way!] : '',
    })),
    numbers: isWords ? undefined : numbers,
  };
}

/** Results as rows of a table with a column for each plan. */
export function resultRows(all: AllPlans, cells: readonly Cell[]): ResultRow[] {
  return cells.map((cell) => rowOf(all, cell));
}

/** What a chart of one result says, for those who do not see it. */
export function rowSaid({ name, unit, values }: ResultRow, plans: readonly string[]): string {
  const each = values.map(({ text, best }, p) => [`${plans[p] ?? ''} ${text}`, best].filter(Boolean).join(', '));
  return `${[name, unit].filter(Boolean).join(', ')}: ${each.join('; ')}.`;
}

/** The results as a table: each plan, and how far it lies from the reference, the first one. */
export function plansTable(rows: readonly ResultRow[], plans: readonly string[]): DataTable {
  const apart = plans.map((plan) => ({ name: plansTexts.fromReferenceIn(plan), aside: true })).slice(1);
  return {
    caption: plansTexts.sideBySide,
    columns: [{ name: commonTexts.result }, ...plans.map((name) => ({ name })), ...apart],
    rows: rows.map(({ name, unit, values, numbers }) => [
      figure(name, undefined, unit),
      ...values.map(({ text }, plan) => figure(text, numbers?.[plan])),
      ...values.slice(1).map(({ difference }, k) => differenceCell(difference, numbers, k + 1)),
    ]),
  };
}

function differenceCell(text: string, numbers: ResultRow['numbers'], plan: number): DataCell {
  const [reference, number] = [numbers?.[0], numbers?.[plan]];
  return figure(text, reference === undefined ? undefined : number?.minus(reference));
}
