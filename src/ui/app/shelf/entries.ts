import type { ModelStore } from '../store/modelStore';
import type { Origin } from '../store/snapshot';
import type { Beginning } from './beginning';
import type { ModelLock } from './modelLock';
import { isSampleId } from './record';

/** The place on the shelf of a file that was opened. */
interface Entry {
  readonly id: string;
  /** Whether it was made by a change beside another page that has the model. */
  readonly isCopy: boolean;
  lock: ModelLock | undefined;
  /** Whether the shelf has its file. */
  isOnShelf: boolean;
}

/** Each file that was opened has its own place, to which undo comes back. */
export interface Entries {
  /** That of the model now open. */
  now(): Entry;
  /** Gives the model now open another place. */
  copy(): void;
}

function newEntry(isCopy: boolean): Entry {
  return { id: crypto.randomUUID(), isCopy, lock: undefined, isOnShelf: false };
}

function entryOf({ work, lock }: Beginning): Entry {
  if (work === undefined || isSampleId(work.id)) return newEntry(false);
  return { id: work.id, isCopy: work.isCopy, lock, isOnShelf: true };
}

export function createEntries(store: ModelStore, beginning: Beginning): Entries {
  const entries = new WeakMap<Origin, Entry>([[store.origin(), entryOf(beginning)]]);
  return {
    now: () => {
      const known = entries.get(store.origin()) ?? newEntry(false);
      entries.set(store.origin(), known);
      return known;
    },
    copy: () => void entries.set(store.origin(), newEntry(true)),
  };
}
