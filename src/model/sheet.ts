/** One record of a model file, as typed: nothing in it has been checked. */
export interface SheetRow {
  /** Record number in the file; the header is 1. */
  readonly row: number;
  /** Text by column name; a column that the record does not reach is absent. */
  readonly fields: ReadonlyMap<string, string>;
}

/** A model as text: what a file holds, before any of it is understood. */
export interface Sheet {
  /** Column names in file order, unknown ones too. */
  readonly columns: readonly string[];
  /** Records in file order, without blank lines. */
  readonly rows: readonly SheetRow[];
}

const planMark = 'plan:';

/** The text of a field, trimmed; blank where the record has none. */
export function field(row: SheetRow, column: string): string {
  return (row.fields.get(column) ?? '').trim();
}

/** The plan that a column holds formulas for, or undefined for any other column. */
export function planOfColumn(column: string): string | undefined {
  return column.startsWith(planMark) ? column.slice(planMark.length).trim() : undefined;
}

/** Where a record's figure comes from, as the file says; blank where it says nothing. */
export function sourceOf({ rows }: Sheet, row: number): string {
  const found = rows.find((one) => one.row === row);
  return found === undefined ? '' : field(found, 'source');
}

/** A sheet with one record replaced; the other records stay the same objects. */
export function withRow(sheet: Sheet, changed: SheetRow): Sheet {
  return {
    ...sheet,
    rows: sheet.rows.with(
      sheet.rows.findIndex(({ row }) => row === changed.row),
      changed,
    ),
  };
}

/** A record with one field replaced. */
export function withField(row: SheetRow, column: string, text: string): SheetRow {
  return { ...row, fields: new Map(row.fields).set(column, text) };
}
