import { field, withField, type Sheet, type SheetRow } from '../sheet';

/** A number for a new record that no record of the sheet has, nor one of the file it was read from. */
export function nextRow({ rows }: Sheet, from?: Sheet): number {
  return Math.max(1, highest(rows), highest(from?.rows ?? [])) + 1;
}

function highest(rows: readonly SheetRow[]): number {
  return rows.reduce((most, { row }) => Math.max(most, row), 0);
}

/** A new record with some of its fields filled. */
export function newRow(row: number, fields: Readonly<Record<string, string>>): SheetRow {
  return { row, fields: new Map(Object.entries(fields).filter(([, text]) => text !== '')) };
}

export function indexOfRow({ rows }: Sheet, row: number): number {
  return rows.findIndex((one) => one.row === row);
}

/** The heading that each record stands under: its own, or the one of the record before it. */
function groupsOf(rows: readonly SheetRow[]): string[] {
  let group = '';
  return rows.map((row) => (group = field(row, 'group') || group));
}

/** The heading that a record stands under. */
export function groupOfRow(sheet: Sheet, row: number): string {
  return groupsOf(sheet.rows)[indexOfRow(sheet, row)] ?? '';
}

/** Records in another order or number, each under the heading that it stood under: a blank one reads the row before. */
function underTheSameHeadings(sheet: Sheet, rows: readonly SheetRow[]): Sheet {
  const groups = groupsOf(sheet.rows);
  const before = new Map(sheet.rows.map((row, i) => [row.row, groups[i] ?? '']));
  let group = '';
  const kept = rows.map((row) => {
    const own = before.get(row.row) ?? (field(row, 'group') || group);
    const follows = own === group || field(row, 'group') !== '';
    group = field(row, 'group') || own;
    return follows ? row : withField(row, 'group', own);
  });
  return withColumns({ ...sheet, rows: kept });
}

/** A sheet that has a column for each field that its records fill. */
function withColumns(sheet: Sheet): Sheet {
  const known = new Set(sheet.columns);
  const missing = new Set(sheet.rows.flatMap((row) => [...row.fields.keys()].filter((column) => !known.has(column))));
  return missing.size === 0 ? sheet : { ...sheet, columns: [...sheet.columns, ...missing] };
}

/** A sheet with new records behind a record; at its end where that is not there. */
export function withRowsAfter(sheet: Sheet, after: number | undefined, added: readonly SheetRow[]): Sheet {
  const at = after === undefined ? -1 : indexOfRow(sheet, after);
  const index = at === -1 ? sheet.rows.length : at + 1;
  return underTheSameHeadings(sheet, sheet.rows.toSpliced(index, 0, ...added));
}

/** A sheet without some records. */
export function withoutRows(sheet: Sheet, rows: ReadonlySet<number>): Sheet {
  return underTheSameHeadings(
    sheet,
    sheet.rows.filter(({ row }) => !rows.has(row)),
  );
}

/** A sheet with a record one place up or down among those of its heading; the same where it stands at their end. */
export function withRowMoved(sheet: Sheet, row: number, by: -1 | 1): Sheet {
  const at = indexOfRow(sheet, row);
  const groups = groupsOf(sheet.rows);
  const moved = sheet.rows[at];
  if (moved === undefined || groups[at] !== groups[at + by]) return sheet;
  return underTheSameHeadings(sheet, sheet.rows.toSpliced(at, 1).toSpliced(at + by, 0, moved));
}

/** A sheet with some fields of a record changed. */
export function withFields(sheet: Sheet, row: number, texts: Readonly<Record<string, string>>): Sheet {
  const at = indexOfRow(sheet, row);
  const before = sheet.rows[at];
  if (before === undefined) return sheet;
  const changed = Object.entries(texts).reduce((one, [column, text]) => withField(one, column, text), before);
  return withColumns({ ...sheet, rows: sheet.rows.with(at, changed) });
}
