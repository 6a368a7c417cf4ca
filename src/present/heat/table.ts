import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Grid, Surface } from '../../study/grid';
import { columnDecimals } from '../text/columnDecimals';
import { figure, type DataTable } from '../table/dataTable';
import { commonTexts } from '../text/commonTexts';
import { allDigits } from '../table/takenOut';
import type { Format } from '../text/numberFormat';
import { withUnit } from '../text/withUnit';
import { heatTexts } from './texts';

/**
 * A result over two inputs as texts of a table; as in the picture, the highest number of the second input is on top.
 */
export interface HeatTable {
  readonly across: readonly Head[];
  readonly rows: readonly { readonly head: Head; readonly cells: readonly TableCell[] }[];
}

/** A number of an input, and whether it is today's. */
interface Head {
  readonly text: string;
  readonly today: boolean;
}

interface TableCell {
  /** Undefined where it cannot be computed. */
  readonly text: string | undefined;
  /** Whether it is on the side that the picture hatches. */
  readonly worse: boolean;
}

/** An input, for writing its numbers, and its number today. */
export interface Along {
  readonly cell: Cell;
  readonly today: Decimal;
}

/**
 * The exact values of a table, the highest number of the second input first. It yields undefined after each value, and
 * the rows so far after each row.
 */
export function* exactRows(
  surface: Surface,
  across: readonly Decimal[],
  down: readonly Decimal[],
): Generator<Grid<Decimal> | undefined, void> {
  const values: Decimal[][] = [];
  const falling = [...down].reverse();
  for (const y of falling) {
    const row: Decimal[] = [];
    values.push(row);
    for (const x of across) {
      row.push(surface.exact(x, y));
      yield undefined;
    }
    yield { across, down: falling.slice(0, values.length), values: values.map((each) => [...each]) };
  }
}

/** @param isWorse whether a result is on the side that the picture hatches */
export function heatTable(
  { across, down, values }: Grid<Decimal>,
  along: { readonly across: Along; readonly down: Along },
  result: Cell,
  isWorse: (value: Decimal) => boolean,
  format: Format,
): HeatTable {
  const decimals = columnDecimals(values.flat(), result.unit);
  const head = (value: Decimal, { today }: Along): Head => ({ text: format.full(value), today: value.eq(today) });
  const cell = (value: Decimal): TableCell => ({
    text: value.isFinite() ? format.fixed(value, decimals) : undefined,
    worse: value.isFinite() && isWorse(value),
  });
  return {
    across: across.map((x) => head(x, along.across)),
    rows: down.map((y, j) => ({ head: head(y, along.down), cells: (values[j] ?? []).map(cell) })),
  };
}

/**
 * The table as it is taken out: a column for each number of the first input, by which it is called, as any program
 * reads it.
 * @param shown made from the grid
 * @param result as a caption names it, with its unit
 */
export function heatDataTable(
  shown: HeatTable,
  { across, down, values }: Grid<Decimal>,
  along: { readonly across: Along; readonly down: Along },
  result: string,
): DataTable {
  const title = heatTexts.downAndAcross(withUnit(along.down.cell), withUnit(along.across.cell));
  return {
    caption: result,
    columns: [{ name: title }, ...across.map((x) => ({ name: allDigits(x) }))],
    rows: shown.rows.map(({ head, cells }, j) => [
      { ...figure(head.text, down[j]), note: head.today ? commonTexts.today : undefined },
      ...cells.map(({ text }, i) =>
        text === undefined ? figure(commonTexts.cannotCompute, values[j]?.[i]) : figure(text, values[j]?.[i]),
      ),
    ]),
  };
}

/** All that a table of a result over two inputs is made from. */
export interface TableRequest {
  readonly surface: Surface;
  readonly across: Along & { readonly places: readonly Decimal[] };
  readonly down: Along & { readonly places: readonly Decimal[] };
  readonly result: Cell;
  /** The result as a caption names it, with its unit. */
  readonly caption: string;
  readonly isWorse: (value: Decimal) => boolean;
  /** The worse side in words, as `below 0`. */
  readonly worseText: string;
}
