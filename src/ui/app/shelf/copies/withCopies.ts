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
  let loading: Promise<Copies | undefined> | undefined;
  const copies = (): Promise<Copies | undefined> =>
    (loading ??= import('./copies').then(
      ({ createCopies }) => createCopies(database, () => caches.open(copiesName)),
      () => (loading = undefined),
    ));
  return {
    ...database,
    write: async (work, file, steps) => {
      const hasFile = await database.write(work, file, steps);
      if (hasFile) void copies().then((made) => made?.written(work, file));
      return hasFile;
    },
    addVersion: async (made, first) => {
      await database.addVersion(made, first);
      void copies().then((there) => there?.version(made, first));
    },
    remove: async (id) => {
      await (await copies())?.removed(id);
      await database.remove(id);
    },
  };
}
