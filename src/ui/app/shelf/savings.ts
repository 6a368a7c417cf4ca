import type { ModelStore } from '../store/modelStore';
import type { ShelfDatabase } from './database';
import type { Keeping } from './keeping';
import { isSampleId, type ShelfWork } from './record';
import type { KeptSteps } from './steps/keptSteps';

/** Keeps versions, and the steps of undo, of work that is written, with a part that loads with the first of it. */
export interface Savings extends Pick<KeptSteps, 'bringBack' | 'writing' | 'failed'> {
  readonly written: (work: ShelfWork) => void;
  /** Makes a version of the present work at once. */
  readonly save: () => Promise<void>;
  /** The same for a page that is left, which cannot wait. */
  readonly leave: () => void;
}

interface SavingsOptions {
  readonly database: ShelfDatabase;
  readonly store: ModelStore;
  /** The present work; undefined where this page does not write it. */
  readonly now: () => ShelfWork | undefined;
  /** Called where no version could be made. */
  readonly failed: (reason: unknown) => void;
  /** Called where work was written without its steps, which can be written now. */
  readonly again: () => void;
}

export function createSavings({ database, store, now, failed, again }: SavingsOptions): Savings {
  let loading: Promise<Keeping> | undefined;
  let keeping: Keeping | undefined;
  let isOwed = false;
  const load = (): Promise<Keeping> =>
    (loading ??= import('./keeping').then(({ createKeeping }) => {
      keeping = createKeeping(database, store, failed, again);
      if (isOwed) again();
      return keeping;
    }));
  const ownNow = (): ShelfWork | undefined => {
    const work = now();
    return work === undefined || isSampleId(work.id) ? undefined : work;
  };
  return {
    written: (work) => {
      if (!isSampleId(work.id)) load().then((made) => made.written(work), failed);
    },
    save: async () => {
      const work = ownNow();
      if (work !== undefined) await (await load()).save(work);
    },
    leave: () => {
      const work = ownNow();
      if (work !== undefined) keeping?.save(work).catch(() => undefined);
    },
    bringBack: async (work) => (await load()).bringBack(work),
    writing: (work, isLeft) => {
      if (keeping !== undefined) return keeping.writing(work, isLeft);
      isOwed = true;
      // That it cannot be loaded is said once work is written.
      load().catch(() => undefined);
      return undefined;
    },
    failed: () => keeping?.failed(),
  };
}
