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

/** How a line is counted. */
export interface Counted {
  /** Whether it rises with the plants. */
  readonly rises: boolean;
  /** Whether a person says so, against the rule. */
  readonly byHand: boolean;
}

/** A line, a sum or a result of the budget; amounts of a year and, where plants are counted, of a plant. */
export interface OnePlanRow {
  /** The amount of a year; undefined for a heading. */
  readonly amount: Decimal | undefined;
  readonly kind: 'head' | 'line' | 'sum' | 'result';
  readonly name: string;
  /** The entry of a line. */
  readonly cell: Cell | undefined;
  /** Of a line. */
  readonly counted: Counted | undefined;
  /** Blank for a heading. */
  readonly year: string;
  /** Blank where plants are not counted. */
  readonly plant: string;
}

/** A line, a sum or a result with its amount of a year; a heading has none. */
interface Amounted {
  readonly kind: OnePlanRow['kind'];
  readonly name: string;
  readonly cell?: Cell;
  readonly amount?: Decimal;
  readonly counted?: Counted;
}

/** The budget in the order of the trade, without lines of 0. */
export function onePlanLines({ budget }: OnePlan, nameOf: (cell: Cell) => string): Amounted[] {
  const { parts, totals } = onePlanTexts;
  const part = (heading: string, list: readonly PlanLine[], rises: boolean): Amounted[] => {
    const lines = list.filter(({ amount }) => !amount.isZero());
    const rows = lines.map(({ cell, amount, byHand }): Amounted => {
      return { kind: 'line', name: nameOf(cell), cell, amount, counted: { rises, byHand } };
    });
    return rows.length === 0 ? [] : [{ kind: 'head', name: heading }, ...rows];
  };
  const all = budget.totals.returns.plus(budget.totals.otherReturns);
  return [
    ...part(parts.returns, budget.returns, true),
    ...part(parts.otherReturns, budget.otherReturns, false),
    { kind: 'sum', name: totals.returns, amount: all },
    ...part(parts.variable, budget.variable, true),
    { kind: 'sum', name: totals.variable, amount: budget.totals.variable },
    { kind: 'result', name: onePlanTexts.overVariable, amount: budget.overVariable },
    ...part(parts.fixed, budget.fixed, false),
    { kind: 'sum', name: totals.fixed, amount: budget.totals.fixed },
    { kind: 'result', name: onePlanTexts.margin, amount: budget.margin },
  ];
}

/** The rows of the budget in the order of the trade, without lines of 0. */
export function onePlanRows(one: OnePlan, nameOf: (cell: Cell) => string, format: Format): OnePlanRow[] {
  const { forPlants } = one;
  const each = (amount: Decimal): Decimal =>
    forPlants === undefined ? decimal(NaN) : amount.dividedBy(forPlants.plants);
  const all = onePlanLines(one, nameOf);
  const known = all.flatMap(({ amount }) => amount ?? []);
  const decimals = columnDecimals(known, one.unit);
  const eachDecimals = columnDecimals(known.map(each), forPlants?.each);
  const text = (amount: Decimal, places: number): string =>
    amount.isNaN() ? commonTexts.noValue : format.fixed(amount, places);
  return all.map(({ kind, name, cell, amount, counted }) => ({
    kind,
    name,
    cell,
    amount,
    counted,
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
