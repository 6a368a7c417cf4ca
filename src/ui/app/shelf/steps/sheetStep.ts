import type { Sheet, SheetRow } from '../../../../model/sheet';
import { isList, isRecord } from './plainData';

/** A text of a field before and after a step; null where the record lacks the field. */
type FieldStep = readonly [row: number, column: string, before: string | null, after: string | null];

/** A stretch of a list that a step put another in the place of. */
interface Stretch<T> {
  readonly at: number;
  readonly before: readonly T[];
  readonly after: readonly T[];
}

/** What one finished edit did to a sheet, as plain data that leads both ways. */
export interface SheetStep {
  readonly fields: readonly FieldStep[];
  /** Numbers of records, where records were added, taken away or moved. */
  readonly rows?: Stretch<number> | undefined;
  readonly columns?: Stretch<string> | undefined;
}

/** The stretch in which two lists differ; undefined where they are the same. */
function stretchBetween<T>(before: readonly T[], after: readonly T[]): Stretch<T> | undefined {
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && before[at] === after[at]) at += 1;
  let last = 0;
  while (last < shorter - at && before[before.length - 1 - last] === after[after.length - 1 - last]) last += 1;
  if (at === before.length && at === after.length) return undefined;
  return { at, before: before.slice(at, before.length - last), after: after.slice(at, after.length - last) };
}

const none: ReadonlyMap<string, string> = new Map();

function fieldSteps(row: number, before = none, after = none): FieldStep[] {
  const columns = new Set([...before.keys(), ...after.keys()]);
  return [...columns].flatMap((column): FieldStep[] => {
    const [old, now] = [before.get(column), after.get(column)];
    return old === now ? [] : [[row, column, old ?? null, now ?? null]];
  });
}

const numbersOf = ({ rows }: Sheet): number[] => rows.map(({ row }) => row);

/** The step from a sheet to another; records that are the same objects are not looked at. */
export function stepBetween(before: Sheet, after: Sheet): SheetStep {
  const old = new Map(before.rows.map((row) => [row.row, row]));
  const changed = after.rows.flatMap((row) => {
    const was = old.get(row.row);
    old.delete(row.row);
    return was === row ? [] : fieldSteps(row.row, was?.fields, row.fields);
  });
  const gone = [...old.values()].flatMap((row) => fieldSteps(row.row, row.fields));
  return {
    fields: [...changed, ...gone],
    rows: stretchBetween(numbersOf(before), numbersOf(after)),
    columns: stretchBetween(before.columns, after.columns),
  };
}

/** A list on the other side of a step; undefined where the step does not fit it. */
function across<T>(list: readonly T[], stretch: Stretch<T> | undefined, back: boolean): readonly T[] | undefined {
  if (stretch === undefined) return list;
  const [from, to] = back ? [stretch.after, stretch.before] : [stretch.before, stretch.after];
  const fits = stretch.at + from.length <= list.length && from.every((one, i) => list[stretch.at + i] === one);
  return fits ? list.toSpliced(stretch.at, from.length, ...to) : undefined;
}

/**
 * The sheet before a step (back) or after it. Undefined where the step was not made from, or did not lead to, this
 * sheet: each text that it changes is compared first.
 */
export function acrossStep(sheet: Sheet, step: SheetStep, back: boolean): Sheet | undefined {
  const byRow = new Map<number, SheetRow>(sheet.rows.map((row) => [row.row, row]));
  const fresh = new Map<number, Map<string, string>>();
  for (const [row, column, before, after] of step.fields) {
    const [from, to] = back ? [after, before] : [before, after];
    const fields = fresh.get(row) ?? new Map(byRow.get(row)?.fields);
    if ((fields.get(column) ?? null) !== from) return undefined;
    if (to === null) fields.delete(column);
    else fields.set(column, to);
    fresh.set(row, fields);
  }
  const rows = across(numbersOf(sheet), step.rows, back);
  const columns = across(sheet.columns, step.columns, back);
  if (rows === undefined || columns === undefined || new Set(rows).size !== rows.length) return undefined;
  return {
    columns,
    rows: rows.map((row) => {
      const fields = fresh.get(row);
      return fields === undefined ? (byRow.get(row) ?? { row, fields: none }) : { row, fields };
    }),
  };
}

function isStretch(value: unknown, kind: 'number' | 'string'): boolean {
  if (value === undefined) return true;
  if (!isRecord(value)) return false;
  const { at, before, after } = value;
  return (
    Number.isSafeInteger(at) &&
    Number(at) >= 0 &&
    [before, after].every((list) => isList(list, (one) => typeof one === kind))
  );
}

/** Whether what the storage gave is a step that this version of the program can read. */
export function isSheetStep(value: unknown): value is SheetStep {
  if (!isRecord(value)) return false;
  const isText = (text: unknown): boolean => text === null || typeof text === 'string';
  const isField = (one: unknown): boolean =>
    Array.isArray(one) &&
    one.length === 4 &&
    typeof one[0] === 'number' &&
    typeof one[1] === 'string' &&
    isText(one[2]) &&
    isText(one[3]);
  return (
    isList(value['fields'], isField) && isStretch(value['rows'], 'number') && isStretch(value['columns'], 'string')
  );
}

/** Characters and numbers in a step, which its bytes on the disk follow. */
export function weightOf({ fields, rows, columns }: SheetStep): number {
  const texts = fields.reduce((sum, [, column, a, b]) => sum + column.length + (a ?? '').length + (b ?? '').length, 0);
  const lists = [rows, columns].flatMap((stretch) => (stretch === undefined ? [] : [stretch.before, stretch.after]));
  return texts + 8 * (fields.length + 1) + lists.flat().reduce<number>((sum, one) => sum + String(one).length + 2, 0);
}
