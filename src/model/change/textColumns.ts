import { withWays } from '../inText/textParts';
import { field, planOfColumn, withField, type Sheet, type SheetRow } from '../sheet';

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

/** How text rows are written once units are: those of figures change too, names of plans do not. */
export function unitsInText({ columns }: Sheet, change: (unit: string) => string): (row: SheetRow) => SheetRow {
  const plans = new Set(columns.map(planOfColumn));
  return (row) => withWords(row, (text) => withWays(text, (way) => (plans.has(way) ? way : change(way))));
}
