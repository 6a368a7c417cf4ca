import type { Decimal } from '../../core/number';
import type { Content } from '../../model/content';
import type { CellError } from '../../model/values';

/** Why a result has no number while a class has not been told it. */
export function hidden(cell: number): CellError {
  return { code: 'hidden', message: '', cause: cell };
}

export function isHiddenError(error: CellError | undefined): boolean {
  return error?.code === 'hidden';
}

/** What a cell shows in one plan: its exact value or why it has none, and what fills it. */
export interface ShownValue {
  /** In the cell's own unit; true is 1, false 0; NaN beside an error. */
  readonly number: Decimal;
  readonly error: CellError | undefined;
  readonly content: Content | undefined;
}
