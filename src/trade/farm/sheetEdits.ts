import { isNumberText, numberToText, type Decimal } from '../../core/number';
import { usesOf } from '../../model/change/entries';
import type { RangeTexts } from '../../model/change/ranges';
import { newRow, nextRow, withFields, withoutRows, withRowsAfter } from '../../model/change/rows';
import { isNumber, readNumber } from '../../model/readNumber';
import { field, type Sheet, type SheetRow } from '../../model/sheet';

function rowNamed({ rows }: Sheet, name: string): SheetRow | undefined {
  return rows.find((row) => field(row, 'name') === name);
}

/** A sheet with some fields of an entry changed; the same where it has no such entry. */
export function withEntryFields(sheet: Sheet, name: string, texts: Readonly<Record<string, string>>): Sheet {
  const row = rowNamed(sheet, name);
  return row === undefined ? sheet : withFields(sheet, row.row, texts);
}

/** A sheet with a new entry behind another one; the same where it has no such other one. */
export function withEntryAfter(sheet: Sheet, name: string, fields: Readonly<Record<string, string>>): Sheet {
  const row = rowNamed(sheet, name);
  return row === undefined ? sheet : withRowsAfter(sheet, row.row, [newRow(nextRow(sheet), fields)]);
}

/** A sheet without some entries, and without text rows of some labels. */
export function withoutEntries(sheet: Sheet, names: readonly string[], labels: readonly string[] = []): Sheet {
  const isGone = (row: SheetRow): boolean => {
    const name = field(row, 'name');
    return name === '' ? labels.includes(field(row, 'label')) : names.includes(name);
  };
  return withoutRows(sheet, new Set(sheet.rows.filter(isGone).map(({ row }) => row)));
}

/** The number that an entry has in a column, or undefined where there is none. */
export function numberIn(sheet: Sheet, name: string, column = 'formula'): Decimal | undefined {
  const row = rowNamed(sheet, name);
  const text = row === undefined ? '' : field(row, column);
  const read = isNumberText(text) ? readNumber(text) : undefined;
  return read !== undefined && isNumber(read) ? read : undefined;
}

/** A sheet in which nothing goes together with an entry: what is certain cannot. */
function withoutCorrelations(sheet: Sheet, name: string): Sheet {
  const uses = usesOf(sheet, name).filter(({ column }) => column === 'correlation');
  return uses.reduce(
    (changed, { row, without }) => withFields(changed, row, { correlation: without ?? '' }),
    withEntryFields(sheet, name, { correlation: '' }),
  );
}

/** A sheet in which an entry has a number with its source and range, where it has one: then the number is its mode. */
export function withFigure(
  sheet: Sheet,
  name: string,
  number: Decimal,
  source: string,
  range: RangeTexts | undefined,
): Sheet {
  const texts = { formula: numberToText(number), low: '', high: '', ...range, shape: '', source };
  const filled = withEntryFields(sheet, name, texts);
  return range === undefined ? withoutCorrelations(filled, name) : filled;
}
