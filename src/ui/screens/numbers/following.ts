import { untrack, type Accessor } from 'solid-js';
import type { ModelStore } from '../../app/store/modelStore';

/**
 * The model as a row shows it: at once while somebody may see the row, else once nothing has changed for a moment, so
 * that a keystroke waits for no row that nobody sees.
 */
export function createFollowing(store: ModelStore, atOnce: Accessor<boolean>, settled: Accessor<number>): ModelStore {
  return {
    ...store,
    shown: (plan, cell) => {
      if (atOnce()) return store.shown(plan, cell);
      settled();
      return untrack(() => store.shown(plan, cell));
    },
  };
}
