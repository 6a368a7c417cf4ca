import type { Kept } from './beginning';
import { openShelfDatabase } from './database';
import { moveOldWork } from './moveOldWork';
import { pageMemory } from './pageMemory';

const database = openShelfDatabase();

/** The shelf of this browser. */
export const shelfStorage: Kept = {
  database,
  memory: pageMemory,
  moveOldWork: async () => {
    if (pageMemory.isMoved()) return;
    await moveOldWork(database);
    pageMemory.setMoved();
  },
};
