import { field, type Sheet, type SheetRow } from '../sheet';
import { textParts } from '../inText/textParts';
import { columnsWithNames, freeName } from './rename';
import { groupOfRow, newRow, nextRow, withFields, withoutRows, withRowsAfter } from './rows';
import { hasName } from './standingName';
import { isTextRow, textColumns } from './textColumns';
import { withoutTerm } from './totals';

/** A sheet with an entry added, and the row that it has. */
export interface Added {
  readonly sheet: Sheet;
  readonly row: number;
}

/** What a new entry is called and filled with. */
export interface NewEntry {
  readonly label: string;
  readonly unit: string;
  /** A number or a formula. */
  readonly formula: string;
  readonly source: string;
}

/** A sheet with a new entry behind a record, under the same heading. */
export function withEntry(sheet: Sheet, after: number, entry: NewEntry, from?: Sheet): Added {
  const row = nextRow(sheet, from);
  const name = freeName(sheet, entry.label);
  const group = groupOfRow(sheet, after);
  const added = newRow(row, { name, group, ...entry });
  return { sheet: withRowsAfter(sheet, after, [added]), row };
}

/** Fields that only one entry may have: a copy has none of them, so that nothing counts twice. */
const notCopied = ['role', 'budget', 'crop', 'correlation'];

/** A sheet with a copy of an entry behind it, with a name and label of its own. */
export function withCopy(sheet: Sheet, row: number, label: string, from?: Sheet): Added {
  const original = sheet.rows.find((one) => one.row === row);
  const number = nextRow(sheet, from);
  if (original === undefined) return { sheet, row };
  const kept = [...original.fields].filter(([column]) => !notCopied.includes(column));
  const name = freeName(sheet, field(original, 'name').replace(/_\d+$/, ''));
  const copy: SheetRow = { row: number, fields: new Map([...kept, ['name', name], ['label', label]]) };
  return { sheet: withRowsAfter(sheet, row, [copy]), row: number };
}

/** A place that names an entry. */
export interface Use {
  readonly row: number;
  readonly column: string;
  /** The text there once the entry is gone, where it is a plain term of a sum, or one of several correlations. */
  readonly without: string | undefined;
}

function withoutCorrelation(text: string, name: string): string {
  const claims = text.split(';').map((claim) => claim.trim());
  return claims.filter((claim) => claim.split(/\s+/)[0] !== name).join('; ');
}

/** Whether a text has a figure that is made from an entry. */
function tellsOf(text: string, name: string): boolean {
  return text.includes(name) && textParts(text).some((part) => part.kind === 'figure' && hasName(part.formula, name));
}

/** Every place that names an entry, in the order of the sheet: formulas, correlations, figures of texts. */
export function usesOf(sheet: Sheet, name: string): Use[] {
  const columns = columnsWithNames(sheet);
  return sheet.rows.flatMap((row) => {
    if (isTextRow(row)) {
      const told = textColumns.filter((column) => tellsOf(field(row, column), name));
      return told.map((column) => ({ row: row.row, column, without: undefined }));
    }
    return columns.flatMap((column): Use[] => {
      const text = field(row, column);
      if (!hasName(text, name)) return [];
      const without = column === 'correlation' ? withoutCorrelation(text, name) : withoutTerm(text, name);
      return [{ row: row.row, column, without }];
    });
  });
}

/** A sheet without an entry, and without its name where it is a plain term of a sum. Other formulas keep the name. */
export function withoutEntry(sheet: Sheet, row: number): Sheet {
  const gone = sheet.rows.find((one) => one.row === row);
  if (gone === undefined) return sheet;
  const name = field(gone, 'name');
  const uses = name === '' ? [] : usesOf(sheet, name).filter((use) => use.row !== row);
  const freed = uses.reduce(
    (changed, use) =>
      use.without === undefined ? changed : withFields(changed, use.row, { [use.column]: use.without }),
    sheet,
  );
  return withoutRows(freed, new Set([row]));
}
