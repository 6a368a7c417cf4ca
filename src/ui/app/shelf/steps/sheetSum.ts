import { folded, textSum } from '../../../../core/checksum';
import type { Sheet, SheetRow } from '../../../../model/sheet';

const sums = new WeakMap<SheetRow, number>();

function rowSum(row: SheetRow): number {
  const known = sums.get(row);
  if (known !== undefined) return known;
  const fields = [...row.fields].sort(([a], [b]) => (a < b ? -1 : 1)).flat();
  const sum = textSum([String(row.row), ...fields]);
  sums.set(row, sum);
  return sum;
}

/** A checksum of a sheet, 32 bits, which tells whether kept steps are steps of it. A record is read once. */
export function sheetSum({ columns, rows }: Sheet): number {
  return rows.reduce((sum, row) => folded(sum, rowSum(row)), textSum(columns));
}
