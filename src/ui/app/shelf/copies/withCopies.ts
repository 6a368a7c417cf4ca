import type { ShelfDatabase } from '../database';
import type { Copies } from './copies';

/** The storage of second copies, by its name among the caches of the site. */
export const copiesName = 'raftmargin copies';

/** Whether the browser holds second copies; false where it lets nobody ask. */
export async function hasCopies(): Promise<boolean> {
  try {
    return await caches.has(copiesName);
  } catch {
    return false;
  }
}

/**
 * A database of which each model has a second copy, made with a part that loads with the first writing. A copy is made
 * after the database has the work, and taken out before a model is deleted: there is none of what the database lacks,
 * unless the browser has lost that.
 */
export function withCopies(database: ShelfDatabase): ShelfDatabase {
  let loading: Promise<Copies> | undefined;
  const load = async (): Promise<Copies> => {
    try {
      const { createCopies } = await import('./copies');
      return createCopies(database, () => caches.open(copiesName));
    } catch (reason) {
      loading = undefined;
      throw reason;
    }
  };
  const copies = (): Promise<Copies> => (loading ??= load());
  const none = (): void => undefined;
  return {
    ...database,
    write: async (work, file, steps) => {
      const hasFile = await database.write(work, file, steps);
      if (hasFile) copies().then((made) => made.written(work, file), none);
      return hasFile;
    },
    addVersion: async (made, first) => {
      await database.addVersion(made, first);
      copies().then((there) => there.version(made, first), none);
    },
    remove: async (id) => {
      // A copy that stayed would bring the model back: without the part that takes it out, nothing is deleted.
      await (await copies()).removed(id);
      await database.remove(id);
    },
  };
}
