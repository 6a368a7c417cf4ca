import { createSignal, type Accessor } from 'solid-js';
import type { SaveState } from '../../../present/page/saveState';
import { shelfTexts } from '../../../present/page/shelfTexts';

/** Milliseconds after which a storage that has not confirmed a change counts as failed. */
const patience = 3000;

/** Counts the changes, and those of them that are on the disk. */
export interface SaveTally {
  readonly state: Accessor<SaveState>;
  /** Number of changes so far. */
  readonly count: () => number;
  /** Whether some changes are not on the disk yet. */
  readonly isBehind: () => boolean;
  readonly change: () => void;
  /** Notes that the first `until` changes are on the disk; where these are all, `now` becomes the state. */
  readonly confirm: (until: number, now: SaveState) => void;
  /** @param again whether the writing is tried again */
  readonly fail: (reason: string, again?: boolean) => void;
}

export function createSaveTally(first: SaveState): SaveTally {
  const [state, setState] = createSignal<SaveState>(first);
  let overdue: ReturnType<typeof setTimeout> | undefined;
  let [changes, confirmed] = [0, 0];
  const fail = (reason: string, again?: boolean): void => {
    clearTimeout(overdue);
    setState({ state: 'failed', reason, again });
  };
  return {
    state,
    count: () => changes,
    isBehind: () => confirmed < changes,
    change: () => {
      changes += 1;
      setState((before) => (before.state === 'failed' || before.state === 'waiting' ? before : { state: 'waiting' }));
      clearTimeout(overdue);
      overdue = setTimeout(() => fail(shelfTexts.storageSilent), patience);
    },
    confirm: (until, now) => {
      confirmed = Math.max(confirmed, until);
      if (confirmed < changes) return;
      clearTimeout(overdue);
      setState(now);
    },
    fail,
  };
}
