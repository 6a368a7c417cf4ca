import { wording } from '../../language/wording';
import { decimal, sum, type Decimal } from '../../core/number';
import { parseUnit, type Unit } from '../../core/unit';
import { currencyOf } from '../../model/budgetFaults';
import type { Cell } from '../../model/cell';
import { nounsIn } from '../../model/change/formulaScope';
import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import { bestAmongNumbers } from '../../study/envelope';
import { plantsOfYear } from '../results/plantsOfYear';
import { addsUp } from '../theCase/caseOf';
import { columnDecimals } from '../text/columnDecimals';
import type { Format } from '../text/numberFormat';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import type { NamedPlan } from './plans';
import { allPlansTexts } from './texts';
import { figure, words, type DataTable } from '../table/dataTable';
import { printedUnit } from '../text/printedUnit';
import { commonTexts } from '../text/commonTexts';

const unknown = decimal(NaN);

/** A kind of cost in every plan. */
interface CostLine {
  readonly cell: Cell;
  /** By plan; NaN where one has none. */
  readonly amounts: readonly Decimal[];
}

/** What every plan spends, by the cost lines of the budget. */
export interface PlanCosts {
  /** Money for a plant where the model counts plants a year; else money a year. */
  readonly unit: Unit;
  readonly lines: readonly CostLine[];
  /** By plan. */
  readonly totals: readonly Decimal[];
}

/** The costs of a year in every plan, for a plant where that can be said; undefined where there are none to add up. */
export function planCosts(model: Model, values: readonly Values[]): PlanCosts | undefined {
  const costs = model.cells.filter(({ budget }) => budget === 'cost');
  const [first] = costs;
  if (first?.unit === undefined || !costs.every((cell) => addsUp(cell, first))) return undefined;
  const plants = first.unitText === `${currencyOf(first) ?? ''}/year` ? plantsOfYear(model, values) : undefined;
  const unit = plants && parseUnit(`${currencyOf(first) ?? ''}/${plants.noun}`, nounsIn(model));
  const isEach = unit !== undefined && !('code' in unit);
  const lines = costs.map((cell): CostLine => ({
    cell,
    amounts: values.map(({ numbers }, p) => {
      const amount = numbers[cell.id] ?? unknown;
      const each = isEach ? amount.dividedBy(plants!.counts[p]!) : amount;
      return each.isFinite() ? each : unknown;
    }),
  }));
  const totals = values.map((_values, p) => sum(lines.map(({ amounts }) => amounts[p]!)));
  return { unit: isEach ? unit : first.unit, lines, totals };
}

/** A row of the table: a kind of cost, or all of them together. */
export interface CostRow {
  readonly name: string;
  /** Undefined for the sum. */
  readonly cell: Cell | undefined;
  /** By plan, with a word for the least of them. */
  readonly amounts: readonly { readonly text: string; readonly isLeast: boolean }[];
}

export function costTable(costs: PlanCosts, nameOf: (cell: Cell) => string, format: Format): CostRow[] {
  const all = [...costs.lines.map(({ amounts }) => amounts), costs.totals];
  const decimals = columnDecimals(all.flat(), costs.unit);
  const textOf = (amount: Decimal): string => (amount.isNaN() ? allPlansTexts.noValue : format.fixed(amount, decimals));
  const rowOf = (name: string, cell: Cell | undefined, amounts: readonly Decimal[]): CostRow => {
    const least = bestAmongNumbers(amounts, 'lowest');
    const isOne = least.length < amounts.length;
    return {
      name,
      cell,
      amounts: amounts.map((amount, p) => ({ text: textOf(amount), isLeast: isOne && least.includes(p) })),
    };
  };
  return [
    ...costs.lines.map(({ cell, amounts }) => rowOf(nameOf(cell), cell, amounts)),
    rowOf(allPlansTexts.together, undefined, costs.totals),
  ];
}

/** The kind of cost in which the plans lie farthest apart, with the plans of the least and the most. */
function farthest({ lines }: PlanCosts): { line: CostLine; low: number; high: number } | undefined {
  const spans = lines.flatMap((line) => {
    const [[low], [high]] = [bestAmongNumbers(line.amounts, 'lowest'), bestAmongNumbers(line.amounts, 'highest')];
    if (low === undefined || high === undefined || line.amounts[low]!.eq(line.amounts[high]!)) return [];
    return [{ line, low, high, span: line.amounts[high]!.minus(line.amounts[low]!) }];
  });
  return spans.reduce<(typeof spans)[number] | undefined>(
    (widest, one) => (widest === undefined || one.span.gt(widest.span) ? one : widest),
    undefined,
  );
}

/** Which plan spends the least, and where the plans differ most. */
export function costsFinding(
  costs: PlanCosts,
  plans: readonly NamedPlan[],
  nameOf: (cell: Cell) => string,
  format: Format,
): Phrase {
  const [best, ...alike] = bestAmongNumbers(costs.totals, 'lowest');
  const at = (amount: Decimal): string => spoken(amount, costs.unit, format);
  const least =
    best === undefined
      ? plainly(wording`The costs cannot be added up in any plan today.`)
      : alike.length > 0
        ? say`${[best, ...alike].map((p) => plans[p]?.name ?? '').join(', ')} spend the least, ${at(costs.totals[best]!)} each.`
        : say`${plans[best]?.name ?? ''} spends the least: ${at(costs.totals[best]!)} together.`;
  const most = farthest(costs);
  if (most === undefined) return least;
  const { line, low, high } = most;
  return sentences(
    least,
    say`The plans differ most in ${nameOf(line.cell)}: from ${at(line.amounts[low]!)} in ${plans[low]?.name ?? ''} to ${at(line.amounts[high]!)} in ${plans[high]?.name ?? ''}.`,
  );
}

/** The costs as a table with a column for each plan. @param rows made of the costs, in their order */
export function planCostsTable(rows: readonly CostRow[], costs: PlanCosts, plans: readonly NamedPlan[]): DataTable {
  const numbers = [...costs.lines.map(({ amounts }) => amounts), costs.totals];
  const unit = printedUnit(costs.unit.text);
  return {
    caption: allPlansTexts.costsRegion,
    columns: [{ name: commonTexts.entry }, ...plans.map(({ name }) => ({ name, unit }))],
    rows: rows.map(({ name, amounts }, i) => [
      words(name),
      ...amounts.map(({ text }, plan) => figure(text, numbers[i]?.[plan])),
    ]),
  };
}
