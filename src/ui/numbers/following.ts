import { createEffect, createSignal, on, onCleanup, untrack, type Accessor } from 'solid-js';
import type { Live } from '../live';

/** Milliseconds without a change after which what is out of sight follows. */
const pause = 150;

/** A count that goes up each time nothing has changed for a moment. */
export function createCalm(version: Accessor<number>): Accessor<number> {
  const [calm, setCalm] = createSignal(0);
  createEffect(
    on(
      version,
      () => {
        const timer = setTimeout(() => setCalm((count) => count + 1), pause);
        onCleanup(() => clearTimeout(timer));
      },
      { defer: true },
    ),
  );
  return calm;
}

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
