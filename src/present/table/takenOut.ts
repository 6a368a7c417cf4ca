import { decimal, numberToText } from '../../core/number';
import type { TableEntry } from '../../files/exportTable';
import { commonTexts } from '../text/commonTexts';
import type { Format } from '../text/numberFormat';
import { none } from '../text/quantities';
import { columnTitle, isKnown, type DataCell, type DataTable, type NumberBehind } from './dataTable';
import type { Digits } from './digitChoices';
import { plainNumber } from './plainNumber';
import { tableTexts } from './tableTexts';

/** All the digits of a number: up to 34 significant ones, or the shortest that give the same float64. */
export function allDigits(number: NumberBehind): string {
  return numberToText(typeof number === 'number' ? decimal(String(number)) : number);
}

/** A cell of words, of which a line's sign for “nothing” is no word. */
function wordsEntry({ text, note = '' }: DataCell): TableEntry {
  return [text === none ? '' : text, note].filter(Boolean).join(', ');
}

function entryOf(cell: DataCell, digits: Digits, format: Pick<Format, 'marks'>, columnUnit: string): TableEntry {
  const { number, text, unit = columnUnit } = cell;
  if (number === undefined) return wordsEntry(cell);
  if (!isKnown(number)) return digits === 'all' ? '' : commonTexts.cannotCompute;
  if (digits === 'all') return { number: allDigits(number) };
  const shown = plainNumber(cell.alone ?? text, format, unit);
  return shown === undefined ? text : { number: shown };
}

/**
 * A table as it is taken out: its heads, then its rows. Units stand in the heads; a column whose numbers have units of
 * their own is followed by one that names them. A number that cannot be computed is blank with all digits, and said to
 * be so where numbers are as shown.
 */
export function takenRows(
  { columns, rows, foot = [] }: DataTable,
  digits: Digits,
  format: Pick<Format, 'marks'>,
): TableEntry[][] {
  const all = [...rows, ...foot];
  const hasUnits = columns.map((_column, k) => all.some((row) => (row[k]?.unit ?? '') !== ''));
  const heads = columns.flatMap((column, k) => [
    columnTitle(column),
    ...(hasUnits[k] === true ? [tableTexts.unitOf(column.name)] : []),
  ]);
  const lines = all.map((row) =>
    columns.flatMap(({ unit = '' }, k) => {
      const cell = row[k] ?? { text: '' };
      return [entryOf(cell, digits, format, unit), ...(hasUnits[k] === true ? [cell.unit ?? ''] : [])];
    }),
  );
  return [heads, ...lines];
}
