import type { Kept } from './beginning';
import { openShelfDatabase, readForeignStore } from './database';
import { pageMemory } from './pageMemory';

const database = openShelfDatabase();

/** The shelf of this browser. */
export const shelfStorage: Kept = {
  database,
  memory: pageMemory,
  moveOldWork: async () => {
    if (pageMemory.isMoved()) return;
    const kept = await readForeignStore('raftmargin', 'kept');
    if (kept.size > 0) await (await import('./moveOldWork')).moveOldWork(database, kept);
    pageMemory.setMoved();
  },
};
