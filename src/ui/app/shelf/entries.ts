import type { ModelStore } from '../store/modelStore';
import type { Origin } from '../store/snapshot';
import type { Beginning } from './beginning';
import type { ModelLock } from './modelLock';
import { isSampleId } from './record';

/** The shelf entry of a file that was opened. */
interface Entry {
  readonly id: string;
  /** Whether it is a copy, made by a change while another page wrote the model. */
  readonly isCopy: boolean;
  lock: ModelLock | undefined;
  /** Whether its file is in the database. */
  isOnShelf: boolean;
}

/**
 * The shelf entries of this page's models: one for each file opened, so that undo across an opening returns to the same
 * entry.
 */
export interface Entries {
  /** The entry of the model now open. */
  now(): Entry;
  /** Gives the model now open a new entry. */
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
