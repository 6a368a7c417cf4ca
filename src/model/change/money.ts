import { type Decimal, isNumberText, numberToText } from '../../core/number';
import { isCurrency } from '../../core/unit';
import { isNumber, readNumber } from '../readNumber';
import { field, planOfColumn, withField, type Sheet, type SheetRow } from '../sheet';
import { isTextRow, unitsInText } from './textColumns';

/** Columns that hold numbers in the unit of their entry. */
export function numberColumns({ columns }: Sheet): string[] {
  const fixed = ['formula', 'low', 'high', 'step'];
  return columns.filter((column) => fixed.includes(column) || planOfColumn(column) !== undefined);
}

/** A record with its numbers changed, and with another unit; texts that are no numbers stay. */
export function withNumbers(
  row: SheetRow,
  columns: readonly string[],
  unit: string,
  change: (value: Decimal) => Decimal,
): SheetRow {
  const renamed = withField(row, 'unit', unit);
  return columns.reduce((changed, column) => {
    const text = field(row, column);
    const number = isNumberText(text) ? readNumber(text) : undefined;
    return number !== undefined && isNumber(number)
      ? withField(changed, column, numberToText(change(number)))
      : changed;
  }, renamed);
}

/** Currency codes in the units of a sheet, in its order. */
export function currenciesOf({ rows }: Sheet): string[] {
  const codes = rows.flatMap((row) => [...field(row, 'unit').matchAll(/\b[A-Z]{3}\b/g)].map(([code]) => code));
  return [...new Set(codes)].filter((code) => isCurrency(code));
}

/** To which power money stands in a unit's text: 1 in `EUR/h`, −1 in `plant/EUR`. */
function powerOf(unit: string, code: string): number {
  const found = new RegExp(`(^|[*/])\\s*${code}\\b(?:\\s*\\^\\s*(-?\\d+))?`).exec(unit);
  if (found === null) return 0;
  const power = Number(found[2] ?? 1);
  return found[1] === '/' ? -power : power;
}

/**
 * A sheet in another currency. Its figures are kept, or multiplied by a rate.
 * @param rate units of the new currency that one of the old is worth; undefined keeps the figures
 */
export function inCurrency(sheet: Sheet, from: string, to: string, rate?: Decimal): Sheet {
  const columns = numberColumns(sheet);
  const code = new RegExp(`\\b${from}\\b`, 'g');
  const inText = unitsInText(sheet, (unit) => unit.replaceAll(code, to));
  const rows = sheet.rows.map((row) => {
    if (isTextRow(row)) return inText(row);
    const unit = field(row, 'unit');
    const power = powerOf(unit, from);
    if (power === 0) return row;
    const renamed = unit.replaceAll(code, to);
    if (rate === undefined) return withField(row, 'unit', renamed);
    return withNumbers(row, columns, renamed, (value) => value.times(rate.pow(power)));
  });
  return { ...sheet, rows };
}
