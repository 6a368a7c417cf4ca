import type { Decimal } from '../../../core/number';
import { exportedNumber, type TableEntry } from '../../../files/exportTable';
import type { Cell } from '../../../model/cell';
import { lowestOf, type LowestStretch } from '../../../study/lowest';
import { columnDecimals } from '../../text/columnDecimals';
import { numberWithUnit, type Format } from '../../text/numberFormat';
import { withUnit } from '../../text/withUnit';
import type { CostsRow } from './lines';

/** The results at one number of the input, as texts of a table. */
export interface ShownCostsRow {
  readonly input: string;
  readonly today: boolean;
  /** Undefined where one cannot be computed. */
  readonly values: readonly (string | undefined)[];
  /** Label of the lowest; blank where none is known. */
  readonly lowest: string;
}

export function costsRows(rows: readonly CostsRow[], cells: readonly Cell[], format: Format): ShownCostsRow[] {
  const decimals = columnDecimals(
    rows.flatMap(({ values }) => values),
    cells[0]?.unit,
  );
  return rows.map(({ input, values, today }) => ({
    input: format.full(input),
    today,
    values: values.map((value) => (value.isNaN() ? undefined : format.fixed(value, decimals))),
    lowest: cells[lowestOf(values) ?? -1]?.label ?? '',
  }));
}

/** Where another result becomes the lowest, as rows of a table. */
export function changeRows(
  stretches: readonly LowestStretch[],
  cells: readonly Cell[],
  input: Cell,
  format: Format,
): { readonly at: string; readonly lowest: string }[] {
  const shown = (x: Decimal): string => numberWithUnit(format.value(x, input.unit), input.unitText);
  return stretches.map(({ from, to, curve }) => ({
    at: `${shown(from)} – ${shown(to)}`,
    lowest: curve === undefined ? 'none can be computed' : (cells[curve]?.label ?? ''),
  }));
}

/** The rows for other programs, with all digits; blank where one cannot be computed. */
export function costsEntries(
  rows: readonly CostsRow[],
  cells: readonly Cell[],
  input: Cell,
  word: string,
): TableEntry[][] {
  return [
    [withUnit(input), ...cells.map(withUnit), word],
    ...rows.map(({ input: x, values }) => [
      exportedNumber(x),
      ...values.map(exportedNumber),
      cells[lowestOf(values) ?? -1]?.label ?? '',
    ]),
  ];
}
