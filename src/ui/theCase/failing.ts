import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import type { Values } from '../../model/values';
import { letterOf } from '../compared';

/** A check that does not hold, with the letters of the plans in which it does not. */
export interface Failing {
  readonly cell: Cell;
  readonly letters: string;
}

/** @param columns the plans side by side */
export function failingChecks(model: Model, values: readonly Values[], columns: readonly number[]): Failing[] {
  return model.cells.filter(({ role }) => role === 'check').flatMap((cell) => {
    const letters = columns.flatMap((plan, column) =>
      (values[plan]?.numbers[cell.id]?.isZero() === true ? [letterOf(column, columns.length)] : []));
    return letters.length === 0 ? [] : [{ cell, letters: letters.join(' and ') }];
  });
}
