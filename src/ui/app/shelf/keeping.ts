import type { ModelStore } from '../store/modelStore';
import type { ShelfDatabase } from './database';
import { askToPersist } from './persistence';
import { createKeptSteps, type KeptSteps } from './steps/keptSteps';
import { createVersions, type Versions } from './versions';

/** What is kept beside a model's work: its versions, and the steps of undo. */
export type Keeping = Versions & KeptSteps;

/** Milliseconds to the next try of a writing that failed: the first wait, and the longest. */
const firstWait = 1000;
const longestWait = 60_000;

/**
 * @param failed is called where a version could not be stored
 * @param again writes again: where work was written without its steps, and where a writing failed
 */
export function createKeeping(
  database: ShelfDatabase,
  store: ModelStore,
  failed: (reason: unknown) => void,
  again: () => void,
): Keeping {
  const versions = createVersions(database, failed);
  const steps = createKeptSteps(database, store, again);
  let isAsked = false;
  let wait = firstWait;
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    ...steps,
    ...versions,
    failed: () => {
      steps.failed();
      clearTimeout(timer);
      timer = setTimeout(again, wait);
      wait = Math.min(2 * wait, longestWait);
    },
    written: (work) => {
      clearTimeout(timer);
      wait = firstWait;
      if (!isAsked) void askToPersist();
      isAsked = true;
      versions.written(work);
    },
  };
}
