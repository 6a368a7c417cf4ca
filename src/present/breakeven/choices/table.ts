import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import { columnDecimals } from '../../text/columnDecimals';
import { commonTexts } from '../../text/commonTexts';
import type { Format } from '../../text/numberFormat';
import { withUnit } from '../../text/withUnit';
import type { ChoiceRow } from './rows';

interface ChoiceColumn {
  readonly name: string;
  readonly of: (row: ChoiceRow) => Decimal;
  /** Whether it is a difference, which has a sign. */
  readonly isDifference?: boolean;
}

/** The results with each choice of an input, one row a choice; today's is marked. */
export function choiceTable(
  rows: readonly ChoiceRow[],
  input: Cell,
  result: Cell,
  columns: readonly ChoiceColumn[],
  format: Format,
): DataTable {
  const known = columns.flatMap(({ of }) => rows.map(of).filter((value) => value.isFinite()));
  const decimals = columnDecimals(known, result.unit);
  const cell = (value: Decimal, isDifference = false): DataCell => {
    if (!value.isFinite()) return figure(commonTexts.cannotCompute, value);
    const text = isDifference ? format.signed(value, result.unit, decimals) : format.fixed(value, decimals);
    return figure(text, value);
  };
  return {
    caption: withUnit(result),
    columns: [{ name: input.label, words: true }, ...columns.map(({ name }) => ({ name }))],
    rows: rows.map((row) => [
      words(row.choice.words, row.isToday ? commonTexts.today : undefined),
      ...columns.map(({ of, isDifference }) => cell(of(row), isDifference)),
    ]),
  };
}
