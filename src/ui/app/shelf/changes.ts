import { readModel } from '../../../files/readModel';
import { buildModel } from '../../../model/buildModel';
import type { Model } from '../../../model/model';
import type { Sheet } from '../../../model/sheet';
import type { Origin } from '../store/snapshot';
import type { FieldText, ShelfFile, ShelfWork } from './record';

/** The fields in which a sheet differs from the one that it was made from. */
export function changesOf(from: Sheet, to: Sheet): FieldText[] {
  if (from === to) return [];
  const before = new Map(from.rows.map((row) => [row.row, row]));
  return to.rows.flatMap((row) => {
    const old = before.get(row.row);
    if (old === row) return [];
    const changed = [...row.fields].filter(([column, text]) => old?.fields.get(column) !== text);
    return changed.map(([column, text]) => [row.row, column, text] as const);
  });
}

/** A sheet with some fields changed; the other rows stay the same objects. */
export function withChanges(sheet: Sheet, changes: readonly FieldText[]): Sheet {
  if (changes.length === 0) return sheet;
  const byRow = new Map<number, FieldText[]>();
  for (const change of changes) byRow.set(change[0], [...(byRow.get(change[0]) ?? []), change]);
  const rows = sheet.rows.map((row) => {
    const changed = byRow.get(row.row);
    if (changed === undefined) return row;
    return { ...row, fields: new Map([...row.fields, ...changed.map(([, column, text]) => [column, text] as const)]) };
  });
  return { ...sheet, rows };
}

/** Opens what was kept, with its changes. */
export function reopen(
  { name, shipped, opened, bytes }: ShelfFile,
  { changes }: Pick<ShelfWork, 'changes'>,
): { model: Model; origin: Origin } {
  const { model, file } = readModel(bytes);
  const sheet = withChanges(file.sheet, changes);
  const origin = { name, shipped, opened, bytes, file };
  return { model: sheet === file.sheet ? model : buildModel(sheet, model.reading), origin };
}
