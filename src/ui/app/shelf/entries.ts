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
  /** Whether its file is in the database, or on its way there. */
  isOnShelf: boolean;
  /** Whether the database has confirmed its file. */
  isConfirmed: boolean;
}

/**
 * The shelf entries of this page's models: one for each file opened, so that undo across an opening returns to the same
 * entry.
 */
export interface Entries {
  /** The entry of the model now open. */
  readonly now: () => Entry;
  /** Whether an entry is one of this page's. */
  readonly has: (id: string) => boolean;
  /** Gives the model now open a new entry. */
  readonly copy: () => void;
  /** Notes that an entry is no longer in the database: the next change writes it whole. */
  readonly forget: (id: string) => void;
}

function newEntry(isCopy: boolean): Entry {
  return { id: crypto.randomUUID(), isCopy, lock: undefined, isOnShelf: false, isConfirmed: false };
}

function entryOf({ work, lock, isUnwritten = false }: Beginning): Entry {
  if (work === undefined || isSampleId(work.id)) return newEntry(false);
  return { id: work.id, isCopy: work.isCopy, lock, isOnShelf: !isUnwritten, isConfirmed: !isUnwritten };
}

export function createEntries(store: ModelStore, beginning: Beginning): Entries {
  const byOrigin = new WeakMap<Origin, Entry>();
  const byId = new Map<string, Entry>();
  const put = (entry: Entry): Entry => {
    byOrigin.set(store.origin(), entry);
    byId.set(entry.id, entry);
    return entry;
  };
  put(entryOf(beginning));
  const now = (): Entry => byOrigin.get(store.origin()) ?? put(newEntry(false));
  return {
    now,
    has: (id) => byId.has(id),
    copy: () => {
      const { id, lock } = now();
      // Else the model would seem to be written here once the other page is closed.
      lock?.drop();
      byId.delete(id);
      put(newEntry(true));
    },
    forget: (id) => {
      const entry = byId.get(id);
      if (entry !== undefined) entry.isOnShelf = entry.isConfirmed = false;
    },
  };
}
