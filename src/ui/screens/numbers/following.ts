import { untrack, type Accessor } from 'solid-js';
import type { ModelStore } from '../../app/store/modelStore';

/**
 * The store as a row reads it: current while the row may be in sight, else updated only once nothing has changed for a
 * moment, so that a keystroke does not wait for rows out of sight.
 */
export function createFollowing(store: ModelStore, atOnce: Accessor<boolean>, settled: Accessor<unknown>): ModelStore {
  return {
    ...store,
    shown: (plan, cell) => {
      if (atOnce()) return store.shown(plan, cell);
      settled();
      return untrack(() => store.shown(plan, cell));
    },
  };
}
