import type { Sheet } from '../../../../model/sheet';
import { acrossStep } from './sheetStep';
import { sheetSum } from './sheetSum';
import { isStepMark, isStepRecord, type StepRecord } from './stepRecord';

/** The states before and after the present one, the earliest first. */
export interface SheetTrail {
  readonly past: readonly Sheet[];
  readonly future: readonly Sheet[];
  /** The number of the present state. */
  readonly at: number;
}

/** A sheet whose records are those of the file wherever they say the same, as these are written as they stood. */
function likeFile(sheet: Sheet, file: Sheet): Sheet {
  const own = new Map(file.rows.map((row) => [row.row, row]));
  const rows = sheet.rows.map((row) => {
    const original = own.get(row.row);
    if (original === undefined || original === row || original.fields.size !== row.fields.size) return row;
    return [...original.fields].every(([column, text]) => row.fields.get(column) === text) ? original : row;
  });
  return { columns: sheet.columns, rows };
}

/** The states that are reached from a sheet by one step after another, for as long as the steps fit. */
function reached(sheet: Sheet, file: Sheet, next: (i: number) => StepRecord | undefined, back: boolean): Sheet[] {
  const found: Sheet[] = [];
  for (let now: Sheet | undefined = sheet, i = 0; now !== undefined; i += 1) {
    const record = next(i);
    now = record && acrossStep(now, record.step, back);
    if (now !== undefined) found.push((now = likeFile(now, file)));
  }
  return found;
}

/**
 * Reads the steps of a model, as the storage gave them, around its present sheet. Steps that are not of this sheet, or
 * that cannot be read, are left out with all that lie behind them; undefined where there are none then.
 * @param mark what stands beside the model's work
 * @param file the sheet of the file that the model was made from
 */
export function readSteps(found: readonly unknown[], mark: unknown, sheet: Sheet, file: Sheet): SheetTrail | undefined {
  if (!isStepMark(mark) || mark.sum !== sheetSum(sheet)) return undefined;
  const records = [...found, ...(mark.waiting ?? [])].filter(isStepRecord);
  const byNumber = new Map(records.map((record) => [record.number, record]));
  const past = reached(sheet, file, (i) => byNumber.get(mark.at - i), true).reverse();
  const future = reached(sheet, file, (i) => byNumber.get(mark.at + 1 + i), false);
  return past.length + future.length === 0 ? undefined : { past, future, at: mark.at };
}
