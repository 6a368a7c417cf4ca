import { wording } from '../../language/wording';
import { problem, type Problem } from '../../core/problem';
import { nameFault } from '../readCell';
import { field, planOfColumn, withField, type Sheet, type SheetRow } from '../sheet';
import { isTextRow, withWords } from './textColumns';
import { withFormulas } from '../inText/textParts';
import { standingName } from './standingName';

/** Columns in which names of entries stand. */
export function columnsWithNames({ columns }: Sheet): string[] {
  const hasNames = (column: string): boolean =>
    column === 'formula' || column === 'correlation' || planOfColumn(column) !== undefined;
  return columns.filter(hasNames);
}

/** Why an entry cannot have a name: a bad one, or one that another entry has; undefined where it can. */
function newNameFault({ rows }: Sheet, name: string, row?: number): Problem | undefined {
  const fault = nameFault(name);
  if (fault !== undefined) return fault;
  const other = rows.find((one) => one.row !== row && field(one, 'name') === name);
  if (other === undefined) return undefined;
  const label = field(other, 'label') || name.replaceAll('_', ' ');
  return problem('name-twice', wording`name used twice: ${name}. “${label}” has it already; choose another.`, {
    text: name,
  });
}

function replacedIn(
  row: SheetRow,
  columns: readonly string[],
  old: string,
  standingOld: RegExp,
  name: string,
): SheetRow {
  let changed = row;
  for (const column of columns) {
    const text = row.fields.get(column);
    if (text?.includes(old) !== true) continue;
    const renamed = text.replaceAll(standingOld, name);
    if (renamed !== text) changed = withField(changed, column, renamed);
  }
  return changed;
}

/**
 * A sheet in which an entry has another name, also in every formula, correlation and figure of a text that has it; or
 * what is wrong with the name. Entries that do not have it stay the same objects.
 */
export function renamed(sheet: Sheet, row: number, name: string): Sheet | Problem {
  const fault = newNameFault(sheet, name, row);
  if (fault !== undefined) return fault;
  const old = field(sheet.rows.find((one) => one.row === row) ?? { row, fields: new Map() }, 'name');
  if (old === '' || old === name) return sheet;
  const columns = columnsWithNames(sheet);
  const pattern = standingName(old);
  const inFormula = (formula: string): string => formula.replaceAll(pattern, name);
  const rows = sheet.rows.map((one) => {
    if (isTextRow(one)) return withWords(one, (text) => withFormulas(text, inFormula));
    const changed = replacedIn(one, columns, old, pattern, name);
    return one.row === row ? withField(changed, 'name', name) : changed;
  });
  return { ...sheet, rows };
}

/** A name for a label: its letters and digits in the alphabet of names, with a number behind where it is taken. */
export function freeName(sheet: Sheet, label: string): string {
  const plain = label
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '_')
    .replace(/^[_0-9]+|_+$/g, '')
    .slice(0, 40);
  const base = plain === '' ? 'entry' : plain;
  const taken = new Set(sheet.rows.map((row) => field(row, 'name')));
  const isFree = (name: string): boolean => !taken.has(name) && nameFault(name) === undefined;
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? base : `${base}_${count}`;
    if (isFree(name)) return name;
  }
}
