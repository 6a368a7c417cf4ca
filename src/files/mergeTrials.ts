import { field, type Sheet, type SheetRow } from '../model/sheet';

/** Trials with those of another file added. */
export interface MergedTrials {
  readonly sheet: Sheet;
  /** Batches of the other file that were not there yet. */
  readonly added: number;
  /** Batches of the other file that were there. */
  readonly there: number;
}

/** Judged after the timing, on one of the phones: two records of a batch can differ in it. */
const judged = 'left_out';

/** The full content of a row as one text, the same in whichever order the columns stand. */
function contentOf(row: SheetRow): string {
  const columns = [...row.fields.keys()].filter((column) => column !== judged).sort();
  const filled = columns.map((column) => [column, field(row, column)]).filter(([, text]) => text !== '');
  return JSON.stringify(filled);
}

/**
 * Adds the batches of another sheet whose full content is not there yet. Two batches of one content in one file are two
 * batches: as many are added as the other file has more of.
 */
export function mergeTrials(sheet: Sheet, other: Sheet): MergedTrials {
  const have = new Map<string, number>();
  for (const content of sheet.rows.map(contentOf)) have.set(content, (have.get(content) ?? 0) + 1);
  const isNew = (row: SheetRow): boolean => {
    const content = contentOf(row);
    const left = have.get(content) ?? 0;
    have.set(content, left - 1);
    return left <= 0;
  };
  const fresh = other.rows.filter(isNew);
  const next = (sheet.rows.at(-1)?.row ?? 1) + 1;
  const rows = [...sheet.rows, ...fresh.map(({ fields }, i) => ({ row: next + i, fields }))];
  const columns = [...sheet.columns, ...other.columns.filter((column) => !sheet.columns.includes(column))];
  return { sheet: { columns, rows }, added: fresh.length, there: other.rows.length - fresh.length };
}
