import { figure, words, type DataTable } from '../table/dataTable';
import { commonTexts } from '../text/commonTexts';
import { printedUnit } from '../text/printedUnit';
import type { ComparedEntry } from './comparedEntries';

/** Entries under a heading, which may be blank. */
export interface ComparedGroup {
  readonly heading: string;
  readonly rows: readonly ComparedEntry[];
}

/** Entries with their values in two plans as a table; the headings stand in a column where there are any. */
export function comparedTable(caption: string, groups: readonly ComparedGroup[], plans: readonly string[]): DataTable {
  const isHeaded = groups.some(({ heading }) => heading !== '');
  return {
    caption,
    columns: [
      ...(isHeaded ? [{ name: commonTexts.group }] : []),
      { name: commonTexts.entry },
      ...plans.map((name) => ({ name })),
    ],
    rows: groups.flatMap(({ heading, rows }) =>
      rows.map(({ cell, name, values, numbers }) => [
        ...(isHeaded ? [words(heading)] : []),
        figure(name, undefined, printedUnit(cell.unitText)),
        ...values.map((text, k) => figure(text, numbers[k])),
      ]),
    ),
  };
}
