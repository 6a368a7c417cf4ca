import type { Cell } from '../../../model/cell';
import { withRangesFitted } from '../../../model/change/ranges';
import type { ModelStore } from './modelStore';

/** Moves the ranges of some entries to their numbers, in one step for undo. */
export function fitRanges(store: ModelStore, cells: readonly Cell[]): void {
  store.replace(withRangesFitted(store.model(), cells));
}
