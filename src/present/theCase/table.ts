import { exportTable, type TableEntry } from '../../files/exportTable';
import { numberToText } from '../../core/number';
import type { CaseBudget } from './caseOf';
import { headings } from './headings';
import { commonTexts } from '../text/commonTexts';

/** The partial budget as a table for other programs, in exact numbers; without sums where an entry has no value. */
export function budgetTable(made: CaseBudget): string {
  const unit = made.unit.text;
  const isKnown = made.unknown.length === 0;
  const rows = made.sections.flatMap(({ kind, lines, total }): TableEntry[][] => {
    const name = headings[kind].heading.toLowerCase();
    const each = lines.map(({ cell, value }): TableEntry[] => [
      name,
      cell.label,
      { number: numberToText(value) },
      unit,
    ]);
    return isKnown ? [...each, [name, 'sum', { number: numberToText(total) }, unit]] : each;
  });
  const net: TableEntry[][] = isKnown
    ? [['net change', '', { number: numberToText(made.netChange) }, unit]]
    : made.unknown.map(({ cell }) => [commonTexts.noValue, cell.label, '', unit]);
  return exportTable([['kind', 'entry', 'amount', 'unit'], ...rows, ...net]);
}

/** The file's name: that of the model's file with a word added. */
export function tableName(file: string): string {
  return `${file.replace(/\.[^.]*$/, '') || 'model'}-case.csv`;
}
