import { fittedRange, numberOutside } from '../../../model/change/ranges';
import type { Cell } from '../../../model/cell';
import type { ModelStore } from './modelStore';

/** Moves the ranges of some entries to their numbers, in one step for undo. */
export function fitRanges(store: ModelStore, cells: readonly Cell[]): void {
  store.finish();
  for (const cell of cells) {
    const value = numberOutside(store.model(), cell);
    const fitted = value === undefined ? undefined : fittedRange(cell, value);
    if (fitted === undefined) continue;
    store.edit({ row: cell.row, column: 'low', text: fitted.low });
    store.edit({ row: cell.row, column: 'high', text: fitted.high });
  }
  store.finish();
}
