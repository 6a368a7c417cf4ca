import { wording } from '../../../language/wording';
import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { lowestOf, type LowestStretch } from '../../../study/lowest';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import { commonTexts } from '../../text/commonTexts';
import { columnDecimals } from '../../text/columnDecimals';
import { numberWithUnit, type Format } from '../../text/numberFormat';
import { withUnit } from '../../text/withUnit';
import { printedUnit } from '../../text/printedUnit';
import type { CostsRow } from './lines';
import { costsTexts } from './texts';

/** The results at one number of the input, as cells of a table. */
export interface ShownCostsRow {
  readonly input: DataCell;
  readonly values: readonly DataCell[];
  /** Label of the lowest; blank where none is known. */
  readonly lowest: string;
}

export function costsRows(rows: readonly CostsRow[], cells: readonly Cell[], format: Format): ShownCostsRow[] {
  const decimals = columnDecimals(
    rows.flatMap(({ values }) => values),
    cells[0]?.unit,
  );
  const shown = (value: Decimal): string => (value.isNaN() ? commonTexts.cannotCompute : format.fixed(value, decimals));
  return rows.map(({ input, values, today }) => ({
    input: { ...figure(format.full(input), input), note: today ? commonTexts.today : undefined },
    values: values.map((value) => figure(shown(value), value)),
    lowest: cells[lowestOf(values) ?? -1]?.label ?? '',
  }));
}

/** A stretch of the input along which one result is the lowest. */
interface ChangeRow {
  readonly at: string;
  readonly ends: readonly [from: DataCell, to: DataCell];
  readonly lowest: string;
}

/** Where another result becomes the lowest, as rows of a table. */
export function changeRows(
  stretches: readonly LowestStretch[],
  cells: readonly Cell[],
  input: Cell,
  format: Format,
): ChangeRow[] {
  const shown = (x: Decimal): string => numberWithUnit(format.value(x, input.unit), input.unitText);
  const unit = printedUnit(input.unitText);
  return stretches.map(({ from, to, curve }) => ({
    at: `${shown(from)} – ${shown(to)}`,
    ends: [figure(shown(from), from, unit), figure(shown(to), to, unit)],
    lowest: curve === undefined ? wording`none can be computed` : (cells[curve]?.label ?? ''),
  }));
}

/** @param word what the last column names, as `cheapest` */
export function costsTable(
  rows: readonly ShownCostsRow[],
  cells: readonly Cell[],
  input: Cell,
  { caption, word }: { readonly caption: string; readonly word: string },
): DataTable {
  return {
    caption,
    columns: [...[input, ...cells].map((cell) => ({ name: withUnit(cell) })), { name: word, words: true }],
    rows: rows.map((row) => [row.input, ...row.values, words(row.lowest)]),
  };
}

/** Where another result becomes the lowest, as a table; other programs have the ends in columns of their own. */
export function changesTable(rows: readonly ChangeRow[], caption: string, word: string): DataTable {
  const ends = [costsTexts.from, costsTexts.to].map((name) => ({ name, aside: true }));
  return {
    caption,
    columns: [{ name: commonTexts.fromTo }, { name: word, words: true }, ...ends],
    rows: rows.map(({ at, lowest, ends: [from, to] }) => [words(at), words(lowest), from, to]),
  };
}
