import { field, withField, type SheetRow } from '../sheet';

/** Columns of a text row in which figures may stand. */
export const textColumns: readonly string[] = ['label', 'note'];

/** Whether a record is text: it has no name. */
export function isTextRow(row: SheetRow): boolean {
  return field(row, 'name') === '';
}

/** A text row with its texts changed; the same where none is another then. */
export function withWords(row: SheetRow, change: (text: string) => string): SheetRow {
  return textColumns.reduce((changed, column) => {
    const text = field(row, column);
    const after = change(text);
    return after === text ? changed : withField(changed, column, after);
  }, row);
}
