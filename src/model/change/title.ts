import { field, type Sheet } from '../sheet';
import { newRow, nextRow, withFields } from './rows';

/** What the first row of a model says: its title, and what it is about. */
export interface TitleTexts {
  readonly title: string;
  readonly about: string;
}

/** A sheet with another title; one without a row of text gets one at its beginning. */
export function withTitle(sheet: Sheet, { title, about }: TitleTexts, from?: Sheet): Sheet {
  const texts = { label: title, note: about };
  const first = sheet.rows.find((row) => field(row, 'name') === '');
  if (first !== undefined) return withFields(sheet, first.row, texts);
  const row = nextRow(sheet, from);
  const columns = ['label', 'note'].filter((column) => !sheet.columns.includes(column));
  return { columns: [...sheet.columns, ...columns], rows: [newRow(row, texts), ...sheet.rows] };
}
