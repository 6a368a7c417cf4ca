import type { ModelStore } from '../store/modelStore';
import type { ShelfDatabase } from './database';
import { askToPersist } from './persistence';
import { createKeptSteps, type KeptSteps } from './steps/keptSteps';
import { createVersions, type Versions } from './versions';

/** What is kept beside a model's work: its versions, and the steps of undo. */
export type Keeping = Versions & KeptSteps;

/**
 * @param failed is called where a version could not be stored
 * @param again is called where work was written without its steps, which can be written now
 */
export function createKeeping(
  database: ShelfDatabase,
  store: ModelStore,
  failed: (reason: unknown) => void,
  again: () => void,
): Keeping {
  const versions = createVersions(database, failed);
  let isAsked = false;
  return {
    ...createKeptSteps(database, store, again),
    ...versions,
    written: (work) => {
      if (!isAsked) void askToPersist();
      isAsked = true;
      versions.written(work);
    },
  };
}
