import { untrack, type Accessor } from 'solid-js';
import type { Live } from '../live';

/**
 * The model as a row shows it: at once while somebody may see the row, else once nothing has changed for a moment, so
 * that a keystroke waits for no row that nobody sees.
 */
export function createFollowing(live: Live, atOnce: Accessor<boolean>, calm: Accessor<number>): Live {
  return {
    ...live,
    shown: (plan, cell) => {
      if (atOnce()) return live.shown(plan, cell);
      calm();
      return untrack(() => live.shown(plan, cell));
    },
  };
}
