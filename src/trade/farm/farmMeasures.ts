import { isNumberText, numberToText } from '../../core/number';
import { inSystem } from '../../model/change/measures';
import { currenciesOf, inCurrency, numberColumns } from '../../model/change/money';
import { isNumber, readNumber } from '../../model/readNumber';
import { field, withField, type Sheet, type SheetRow } from '../../model/sheet';
import type { FarmAnswers } from './answers';

/** Digits that a figure keeps when it goes into other measures: it is somebody else's, and no better than that. */
const digits = 3;

function rounded(row: SheetRow, columns: readonly string[]): SheetRow {
  return columns.reduce((changed, column) => {
    const text = field(row, column);
    const read = isNumberText(text) ? readNumber(text) : undefined;
    return read !== undefined && isNumber(read)
      ? withField(changed, column, numberToText(read.toSignificantDigits(digits)))
      : changed;
  }, row);
}

/** A template in other measures, with its figures rounded, and in another currency, with its figures kept. */
export function farmMeasures(template: Sheet, { system, currency }: Pick<FarmAnswers, 'system' | 'currency'>): Sheet {
  const [from] = currenciesOf(template);
  const paid = currency === undefined || from === undefined ? template : inCurrency(template, from, currency);
  if (system === undefined) return paid;
  const columns = numberColumns(paid);
  const units = paid.rows.map((row) => field(row, 'unit'));
  const converted = inSystem(paid, system);
  const rows = converted.rows.map((row, i) => (field(row, 'unit') === units[i] ? row : rounded(row, columns)));
  return { ...converted, rows };
}
