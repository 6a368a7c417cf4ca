import { readModel } from '../../../files/readModel';
import { buildModel } from '../../../model/buildModel';
import type { Model } from '../../../model/model';
import type { Sheet, SheetRow } from '../../../model/sheet';
import type { Origin } from '../store/snapshot';
import type { FieldText, Layout, ShelfFile, ShelfWork } from './record';

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

function sameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((one, i) => one === b[i]);
}

/** The columns and records of a sheet; undefined where they are those of the sheet that it was made from. */
export function layoutOf(from: Sheet, { columns, rows }: Sheet): Layout | undefined {
  const numbers = rows.map(({ row }) => row);
  const before = from.rows.map(({ row }) => row);
  return sameList(from.columns, columns) && sameList(before, numbers) ? undefined : { columns, rows: numbers };
}

function arranged(sheet: Sheet, { columns, rows }: Layout): Sheet {
  const byRow = new Map(sheet.rows.map((row) => [row.row, row]));
  const known = new Set(columns);
  const kept = (row: SheetRow): SheetRow => {
    if ([...row.fields.keys()].every((column) => known.has(column))) return row;
    return { ...row, fields: new Map([...row.fields].filter(([column]) => known.has(column))) };
  };
  return { columns, rows: rows.map((row) => kept(byRow.get(row) ?? { row, fields: new Map() })) };
}

/** A sheet with what was done to it; records in which nothing was changed stay the same objects. */
export function withChanges(from: Sheet, { changes, layout }: Pick<ShelfWork, 'changes' | 'layout'>): Sheet {
  const sheet = layout === undefined ? from : arranged(from, layout);
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
  work: Pick<ShelfWork, 'changes' | 'layout'>,
): { model: Model; origin: Origin } {
  const { model, file } = readModel(bytes);
  const sheet = withChanges(file.sheet, work);
  const origin = { name, shipped, opened, bytes, file };
  return { model: sheet === file.sheet ? model : buildModel(sheet, model.reading), origin };
}
