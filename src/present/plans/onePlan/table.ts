import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { PlanLine } from '../../../trade/enterpriseBudget';
import { columnDecimals } from '../../text/columnDecimals';
import { commonTexts } from '../../text/commonTexts';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import type { Format } from '../../text/numberFormat';
import { printedUnit } from '../../text/printedUnit';
import type { OnePlan } from './onePlan';
import { onePlanTexts } from './texts';

/** A line, a sum or a result of the budget; amounts of a year and, where plants are counted, of a plant. */
export interface OnePlanRow {
  /** The amount of a year; undefined for a heading. */
  readonly amount: Decimal | undefined;
  readonly kind: 'head' | 'line' | 'sum' | 'result';
  readonly name: string;
  /** The entry of a line. */
  readonly cell: Cell | undefined;
  /** Blank for a heading. */
  readonly year: string;
  /** Blank where plants are not counted. */
  readonly plant: string;
}

interface Amounted {
  readonly kind: OnePlanRow['kind'];
  readonly name: string;
  readonly cell?: Cell;
  readonly amount?: Decimal;
}

function amountsOf({ budget }: OnePlan, nameOf: (cell: Cell) => string): Amounted[] {
  const { parts, totals } = onePlanTexts;
  const part = (heading: string, list: readonly PlanLine[]): Amounted[] => {
    const lines = list.filter(({ amount }) => !amount.isZero());
    const rows = lines.map(({ cell, amount }): Amounted => ({ kind: 'line', name: nameOf(cell), cell, amount }));
    return rows.length === 0 ? [] : [{ kind: 'head', name: heading }, ...rows];
  };
  const all = budget.totals.returns.plus(budget.totals.otherReturns);
  return [
    ...part(parts.returns, budget.returns),
    ...part(parts.otherReturns, budget.otherReturns),
    { kind: 'sum', name: totals.returns, amount: all },
    ...part(parts.variable, budget.variable),
    { kind: 'sum', name: totals.variable, amount: budget.totals.variable },
    { kind: 'result', name: onePlanTexts.overVariable, amount: budget.overVariable },
    ...part(parts.fixed, budget.fixed),
    { kind: 'sum', name: totals.fixed, amount: budget.totals.fixed },
    { kind: 'result', name: onePlanTexts.margin, amount: budget.margin },
  ];
}

/** The rows of the budget in the order of the trade, without lines of 0. */
export function onePlanRows(one: OnePlan, nameOf: (cell: Cell) => string, format: Format): OnePlanRow[] {
  const { forPlants } = one;
  const each = (amount: Decimal): Decimal =>
    forPlants === undefined ? decimal(NaN) : amount.dividedBy(forPlants.plants);
  const all = amountsOf(one, nameOf);
  const known = all.flatMap(({ amount }) => amount ?? []);
  const decimals = columnDecimals(known, one.unit);
  const eachDecimals = columnDecimals(known.map(each), forPlants?.each);
  const text = (amount: Decimal, places: number): string =>
    amount.isNaN() ? commonTexts.noValue : format.fixed(amount, places);
  return all.map(({ kind, name, cell, amount }) => ({
    kind,
    name,
    cell,
    amount,
    year: amount === undefined ? '' : text(amount, decimals),
    plant: amount === undefined || forPlants === undefined ? '' : text(each(amount), eachDecimals),
  }));
}

/** The same rows as a table that can be taken out. */
export function onePlanTable(one: OnePlan, rows: readonly OnePlanRow[]): DataTable {
  const { forPlants, unit } = one;
  const ofPlant = ({ amount, plant }: OnePlanRow): DataCell[] =>
    forPlants === undefined ? [] : [figure(plant, amount?.dividedBy(forPlants.plants))];
  return {
    caption: onePlanTexts.region,
    columns: [
      { name: onePlanTexts.entry, words: true },
      { name: printedUnit(unit.text) },
      ...(forPlants === undefined ? [] : [{ name: printedUnit(forPlants.each.text) }]),
    ],
    rows: rows.map((row) => [words(row.name), figure(row.year, row.amount), ...ofPlant(row)]),
  };
}
