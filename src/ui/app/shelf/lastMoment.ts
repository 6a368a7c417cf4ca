import type { PageMemory } from './pageMemory';
import { isShelfWork, type ShelfWork } from './record';

/**
 * The work that was put into the page's memory when a page was left, where that is newer than the work in the
 * database.
 */
export function carriedOn(work: ShelfWork, lastText: string | undefined): ShelfWork {
  try {
    const last: unknown = JSON.parse(lastText ?? 'null');
    return isShelfWork(last) && last.id === work.id && last.at > work.at ? last : work;
  } catch {
    return work;
  }
}

/** Work that stands in the page's memory because its page was left before the database confirmed it. */
export interface LastMoments {
  readonly put: (work: ShelfWork) => void;
  /** Whether work on a model stands there. */
  readonly has: (id: string) => boolean;
  /** Takes it out, where some is known to stand there: the memory is not touched with every writing. */
  readonly takeOut: (id: string) => void;
}

export function createLastMoments(memory: PageMemory): LastMoments {
  const known = new Set<string>();
  return {
    put: (work) => {
      memory.setLastMoment(work.id, JSON.stringify(work));
      known.add(work.id);
    },
    has: (id) => {
      if (memory.lastMoment(id) === undefined) return false;
      known.add(id);
      return true;
    },
    takeOut: (id) => {
      if (known.delete(id)) memory.setLastMoment(id, undefined);
    },
  };
}
