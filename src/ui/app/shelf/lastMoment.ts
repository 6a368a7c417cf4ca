import type { PageMemory } from './pageMemory';
import { isShelfFile, isShelfWork, type ShelfFile, type ShelfWork } from './record';

/** Work on a model as it stands in the page's memory, with the bytes of its file where those were put there too. */
type LastWork = ShelfWork & { readonly file?: Omit<ShelfFile, 'bytes'> & { readonly bytes?: readonly number[] } };

function lastWork(id: string, lastText = 'null'): LastWork | undefined {
  try {
    const last: unknown = JSON.parse(lastText);
    return isShelfWork(last) && last.id === id ? last : undefined;
  } catch {
    return undefined;
  }
}

/**
 * The work that was put into the page's memory when a page was left, where that is newer than the work in the
 * database.
 */
export function carriedOn(work: ShelfWork, lastText: string | undefined): ShelfWork {
  const last = lastWork(work.id, lastText);
  return last !== undefined && last.at > work.at ? last : work;
}

/** A model as a whole that was put into the page's memory, as the database had not confirmed its file either. */
export function leftWhole(id: string, lastText: string | undefined): { file: ShelfFile; work: ShelfWork } | undefined {
  const work = lastWork(id, lastText);
  const file = { ...work?.file, bytes: Uint8Array.from(work?.file?.bytes ?? []) };
  return work?.size === file.bytes.length && isShelfFile(file) ? { file, work } : undefined;
}

/** Work that stands in the page's memory because its page was left before the database confirmed it. */
export interface LastMoments {
  /** @param file the file of the work, where the database has not confirmed that either; one too large is left out */
  readonly put: (work: ShelfWork, file?: ShelfFile) => void;
  /** Whether work on a model stands there. */
  readonly has: (id: string) => boolean;
  /** Takes it out, where some is known to stand there: the memory is not touched with every writing. */
  readonly takeOut: (id: string) => void;
}

export function createLastMoments(memory: PageMemory): LastMoments {
  const known = new Set<string>();
  return {
    put: (work, file) => {
      const whole = file && { ...work, file: { ...file, bytes: [...file.bytes] } };
      const isPut = whole !== undefined && memory.setLastMoment(work.id, JSON.stringify(whole));
      if (!isPut) memory.setLastMoment(work.id, JSON.stringify(work));
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
