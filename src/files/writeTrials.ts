import type { Sheet, SheetRow } from '../model/sheet';
import { newTableFile, readTable } from './tableFile';
import { trialsTable } from './tableKind';
import { writeTable } from './writeTable';

/**
 * The text of a trials file that now holds `sheet`. Rows whose fields are those of the same record in `text` stay as
 * they stand there, changed ones are written anew with the texts of their other fields kept, and a row whose number
 * the text does not have is new. From a text that is no trials file the sheet is written by itself.
 */
export function writeTrials(text: string, sheet: Sheet): string {
  const { file, refused } = readTable(text, trialsTable);
  if (refused) {
    const made = newTableFile(sheet, trialsTable);
    return writeTable(made, made.sheet);
  }
  const before = new Map(file.sheet.rows.map((row) => [row.row, row]));
  const rows = sheet.rows.map((row) => sameRow(row, before.get(row.row)));
  return writeTable(file, { columns: sheet.columns, rows });
}

/** The row as the file has it where no field differs: it is written as it stands there. */
function sameRow(row: SheetRow, old: SheetRow | undefined): SheetRow {
  if (old === undefined) return row;
  const columns = new Set([...row.fields.keys(), ...old.fields.keys()]);
  const isSame = [...columns].every((column) => (row.fields.get(column) ?? '') === (old.fields.get(column) ?? ''));
  return isSame ? old : row;
}
