import type { Accessor } from 'solid-js';
import type { ShelfDatabase } from './database';
import { createDelay } from './delay';
import type { Entries } from './entries';
import { createLastMoments } from './lastMoment';
import type { PageMemory } from './pageMemory';
import { isSampleId, type ShelfFile, type ShelfWork } from './record';
import { createSaveTally } from './saveTally';
import type { KeptSteps } from './steps/keptSteps';
import type { StepsWriting } from './steps/stepRecord';
import { newFile, unconfirmedFile, workNow, type KeptParts } from './workNow';
import type { SaveState } from '../../../present/page/saveState';
import { storageFault } from './storageFault';

/** Milliseconds that a change waits at most to be written, even while others follow. */
const soon = 30;

interface WriterOptions {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  readonly entries: Entries;
  readonly first: SaveState;
  /** Called with work that is on the disk. */
  readonly onWritten: (work: ShelfWork) => void;
  /** The steps of undo that are written beside work. */
  readonly steps?: Pick<KeptSteps, 'writing' | 'failed'>;
}

/** Writes the current work to the shelf. */
export interface Writer {
  readonly state: Accessor<SaveState>;
  /** Notes a change, which is written soon. */
  readonly change: () => void;
  /** Whether changes wait to be written. */
  readonly isBehind: () => boolean;
  /** Writes anew where something waits in the page's memory. */
  readonly settle: () => void;
  /** Lets go of what waits: another page writes the model that is open now. */
  readonly rest: () => void;
  /** Writes nothing any more, until what it gives back is called. */
  readonly stop: () => () => void;
  /** Writes what waits at once. */
  readonly flush: () => void;
  /** For a page that is left: unconfirmed work is also put into the page's memory, which is written synchronously. */
  readonly leave: () => void;
}

/** The current work, and the steps of undo that are written beside it. @param isLeft whether the page is left */
function workWithSteps(
  parts: KeptParts,
  { entries, steps }: WriterOptions,
  isLeft?: boolean,
): [ShelfWork, StepsWriting | undefined] {
  const work = workNow(parts, entries);
  const writing = isSampleId(work.id) ? undefined : steps?.writing(work, isLeft);
  return [{ ...work, steps: writing?.mark }, writing];
}

/** The work of a page that is left, with its file where that is not confirmed. */
function workLeft(parts: KeptParts, options: WriterOptions): [ShelfWork, ShelfFile | undefined] {
  const [work] = workWithSteps(parts, options, true);
  return [work, unconfirmedFile(parts, options.entries, work.id)];
}

export function createWriter(parts: KeptParts, options: WriterOptions): Writer {
  const { database, memory, entries } = options;
  const tally = createSaveTally(options.first);
  const lastMoments = createLastMoments(memory);
  let isLeft = false;

  const change = (): void => {
    if (isLeft) return;
    tally.change();
    writing.ask();
  };
  const confirm = (work: ShelfWork, until: number): void => {
    options.onWritten(work);
    tally.confirm(until, isSampleId(work.id) ? { state: 'nothing' } : { state: 'kept', at: new Date(work.at) });
    if (!tally.isBehind()) lastMoments.takeOut(work.id);
  };
  const writing = createDelay(soon, () => {
    const [[work, steps], until, entry] = [workWithSteps(parts, options), tally.count(), entries.now()];
    const file = newFile(parts, entries, work.id);
    memory.setModel(work.id);
    database.write(work, file, steps).then(
      (hasFile) => {
        entry.isOnShelf = entry.isConfirmed = hasFile;
        if (hasFile || isSampleId(work.id)) return confirm(work, until);
        options.steps?.failed();
        change();
      },
      (reason: unknown) => {
        entry.isOnShelf &&= file === undefined;
        options.steps?.failed();
        tally.fail(storageFault(reason), true);
      },
    );
  });
  return {
    state: tally.state,
    isBehind: tally.isBehind,
    change,
    settle: () => {
      if (lastMoments.has(entries.now().id)) change();
    },
    rest: () => {
      writing.cancel();
      memory.setModel(entries.now().id);
      tally.confirm(tally.count(), { state: 'nothing' });
    },
    stop: () => {
      writing.cancel();
      isLeft = true;
      return () => {
        isLeft = false;
        if (tally.isBehind()) change();
      };
    },
    flush: writing.hurry,
    leave: () => {
      if (tally.isBehind() && !isLeft) lastMoments.put(...workLeft(parts, options));
      writing.hurry();
    },
  };
}
