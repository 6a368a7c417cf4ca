import type { Kept } from './beginning';
import { copiesName, hasCopies, withCopies } from './copies/withCopies';
import { openShelfDatabase, readForeignStore } from './database';
import { pageMemory } from './pageMemory';
import { isSampleId } from './record';

const database = withCopies(openShelfDatabase());

/** The shelf of this browser. */
export const shelfStorage: Kept = {
  database,
  memory: pageMemory,
  putBack: async () => {
    const isEmpty = (await database.ids()).every(isSampleId);
    if (!isEmpty || !(await hasCopies())) return '';
    const { putBack } = await import('./copies/putBack');
    return putBack(database, await caches.open(copiesName));
  },
  moveOldWork: async () => {
    if (pageMemory.isMoved()) return;
    const kept = await readForeignStore('raftmargin', 'kept');
    if (kept.size > 0) await (await import('./moveOldWork')).moveOldWork(database, kept);
    pageMemory.setMoved();
  },
};
