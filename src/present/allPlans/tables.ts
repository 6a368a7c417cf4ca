import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { BestStretch } from '../../study/envelope';
import type { InputInterval } from '../breakeven/curve/sample';
import type { SampledRow } from '../breakeven/tables';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import { numberWithUnit, type Format } from '../text/numberFormat';
import { withUnit } from '../text/withUnit';
import { costsTexts } from '../whatMatters/costs/texts';
import type { PlanLines } from './lines';
import { planHead, type NamedPlan } from './plans';
import { allPlansTexts } from './texts';

const digits = 12;
const rowCount = 41;

/** Which plan is the best where, as rows of a table. */
export function bestRows(
  stretches: readonly BestStretch[],
  plans: readonly NamedPlan[],
  input: Cell,
  format: Format,
): { readonly at: string; readonly best: string }[] {
  const bare = (x: Decimal): string => format.full(x.toSignificantDigits(digits));
  return stretches.map(({ from, to, best }) => ({
    at: `${bare(from)} – ${numberWithUnit(bare(to), input.unitText)}`,
    best: best.length === 0 ? allPlansTexts.none : best.map((plan) => planHead(plans[plan]!)).join(', '),
  }));
}

/** The lines of all plans at evenly spaced places of the part that is drawn. */
export function lineRows({ lines }: PlanLines, { from, to }: InputInterval): SampledRow[] {
  return Array.from({ length: rowCount }, (_, k) => {
    const x = Number((from + ((to - from) * k) / (rowCount - 1)).toPrecision(6));
    const ys = lines.map(({ line }) => line.float(x));
    return { x, ys: ys.map((y) => (Number.isFinite(y) ? y : NaN)) };
  });
}

/** Where which plan is the best as a table; other programs have the ends in columns of their own. */
export function bestTable(
  rows: ReturnType<typeof bestRows>,
  stretches: readonly BestStretch[],
  input: Cell,
  caption: string,
  format: Format,
): DataTable {
  const end = (x: Decimal | undefined): DataCell =>
    x === undefined ? words('') : figure(format.full(x.toSignificantDigits(digits)), x);
  const ends = [costsTexts.from, costsTexts.to].map((name) => ({ name, aside: true }));
  return {
    caption,
    columns: [{ name: withUnit(input) }, { name: allPlansTexts.plan, words: true }, ...ends],
    rows: rows.map(({ at, best }, i) => [words(at), words(best), end(stretches[i]?.from), end(stretches[i]?.to)]),
  };
}
