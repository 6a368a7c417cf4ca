import { listed, textOf } from '../text/phrase';
import { letterOf } from '../text/planLetter';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';

/** A check that does not hold. */
export interface Failing {
  readonly cell: Cell;
  /** Letters of the plans in which it does not hold; blank where there is only one plan. */
  readonly letters: string;
}

/**
 * The checks that do not hold; a check without a value is left out.
 * @param columns the plans side by side
 * @param value of a cell in a plan: 0 is false, NaN where there is none
 */
export function failingChecks(
  cells: readonly Cell[],
  columns: readonly number[],
  value: (plan: number, cell: Cell) => Decimal | undefined,
): Failing[] {
  return cells
    .filter(({ role }) => role === 'check')
    .flatMap((cell) => {
      const letters = columns.flatMap((plan, column) =>
        value(plan, cell)?.isZero() === true ? [letterOf(column, columns.length)] : [],
      );
      return letters.length === 0 ? [] : [{ cell, letters: textOf(listed(letters)) }];
    });
}
