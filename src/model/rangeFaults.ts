import { isNumberText } from '../core/number';
import { problem, type Problem } from '../core/problem';
import type { Cell } from './cell';
import { isNumber, readNumber } from './readNumber';
import { field, type SheetRow } from './sheet';

/** What is wrong between a cell's range and its shared formula, or undefined. */
export function rangeFault(cell: Cell, shared: string): Problem | undefined {
  const { range, row, name } = cell;
  if (range === undefined) return undefined;
  if (!isNumberText(shared)) {
    const where = { row, column: 'low', cell: name, text: range.low.toString() };
    return problem(
      'range-calculated',
      `range on a calculated entry: ${name}. Give ranges to the inputs that it is made from.`,
      where,
    );
  }
  const value = readNumber(shared);
  if (!isNumber(value) || (value.gte(range.low) && value.lte(range.high))) return undefined;
  const span = `${range.low.toString()} to ${range.high.toString()}`;
  const where = { row, column: 'formula', cell: name, text: shared };
  return problem('range-value', `value outside its range: ${shared}. Widen ${span}, or change the value.`, where);
}

/** The faults of all ranges; low and high bound the shared formula only. */
export function rangeFaults(cells: readonly Cell[], rows: readonly SheetRow[]): Problem[] {
  return cells.flatMap((cell) => {
    const row = rows[cell.id];
    return row === undefined ? [] : (rangeFault(cell, field(row, 'formula')) ?? []);
  });
}
