import type { ShelfDatabase } from './database';
import { isSampleId, type ShelfWork } from './record';
import type { Versions } from './versions';

/** Makes versions of work that is written, with a part that loads with the first of it. */
export interface Savings {
  readonly written: (work: ShelfWork) => void;
  /** Makes a version of the present work at once. */
  readonly save: () => Promise<void>;
  /** The same for a page that is left, which cannot wait. */
  readonly leave: () => void;
}

/**
 * @param now the present work; undefined where this page does not write it
 * @param failed is called where no version could be made
 */
export function createSavings(
  database: ShelfDatabase,
  now: () => ShelfWork | undefined,
  failed: (reason: unknown) => void,
): Savings {
  let versions: Versions | undefined;
  const load = async (): Promise<Versions> => {
    const { createVersions, askToPersist } = { ...(await import('./versions')), ...(await import('./persistence')) };
    if (versions === undefined) void askToPersist();
    return (versions ??= createVersions(database, failed));
  };
  const ownNow = (): ShelfWork | undefined => {
    const work = now();
    return work === undefined || isSampleId(work.id) ? undefined : work;
  };
  return {
    written: (work) => {
      if (isSampleId(work.id)) return;
      if (versions === undefined) load().then((made) => made.written(work), failed);
      else versions.written(work);
    },
    save: async () => {
      const work = ownNow();
      if (work !== undefined) await (await load()).save(work);
    },
    leave: () => {
      const work = ownNow();
      if (work !== undefined) versions?.save(work).catch(() => undefined);
    },
  };
}
