import type { Sheet, SheetRow } from '../../model/sheet';
import { withField, withRow } from '../../model/sheet';

/** The columns of a trials file that is begun on the screen. */
const trialsColumns: readonly string[] = [
  'step',
  'plants',
  'seconds',
  'worker',
  'rating',
  'date',
  'lost',
  'note',
  'way',
];

function withColumns({ columns, rows }: Sheet, wanted: readonly string[]): Sheet {
  if (columns.length === 0) return { columns: trialsColumns, rows };
  return { columns: [...columns, ...wanted.filter((column) => !columns.includes(column))], rows };
}

/** A sheet with one field changed; the column is added where the file lacks it. */
export function withText(sheet: Sheet, row: number, column: string, text: string): Sheet {
  const found = sheet.rows.find((each) => each.row === row);
  return found === undefined ? sheet : withRow(withColumns(sheet, [column]), withField(found, column, text));
}

/** A sheet with a batch added at its end. */
export function withBatch(sheet: Sheet, texts: Readonly<Record<string, string>>): Sheet {
  const filled = Object.entries(texts).filter(([, text]) => text !== '');
  const row: SheetRow = { row: (sheet.rows.at(-1)?.row ?? 1) + 1, fields: new Map(filled) };
  const wide = withColumns(
    sheet,
    filled.map(([column]) => column),
  );
  return { ...wide, rows: [...sheet.rows, row] };
}

/** A sheet without one of its batches. */
export function withoutBatch(sheet: Sheet, row: number): Sheet {
  return { ...sheet, rows: sheet.rows.filter((each) => each.row !== row) };
}
