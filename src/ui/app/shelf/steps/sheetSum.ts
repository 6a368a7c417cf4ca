import type { Sheet, SheetRow } from '../../../../model/sheet';

const sums = new WeakMap<SheetRow, number>();

/** The checksum FNV-1a of 32 bits over the code units of texts, each ended by a mark that no text holds. */
function sumOf(texts: Iterable<string>, start: number): number {
  let sum = start;
  for (const text of texts) {
    for (let i = 0; i < text.length; i += 1) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
    sum = Math.imul(sum ^ 0x1ffff, 0x01000193);
  }
  return sum;
}

const offset = 0x811c9dc5 | 0;

function rowSum(row: SheetRow): number {
  const known = sums.get(row);
  if (known !== undefined) return known;
  const fields = [...row.fields].sort(([a], [b]) => (a < b ? -1 : 1)).flat();
  const sum = sumOf([String(row.row), ...fields], offset);
  sums.set(row, sum);
  return sum;
}

/** A checksum of a sheet, 32 bits, which tells whether kept steps are steps of it. A record is read once. */
export function sheetSum({ columns, rows }: Sheet): number {
  return rows.reduce((sum, row) => Math.imul(sum ^ rowSum(row), 0x01000193), sumOf(columns, offset));
}
