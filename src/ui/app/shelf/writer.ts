import type { Accessor } from 'solid-js';
import type { ModelStore } from '../store/modelStore';
import type { KeptChoice } from '../preferences/choice';
import type { Drafts } from '../store/drafts';
import { changesOf, layoutOf } from './changes';
import type { ShelfDatabase } from './database';
import type { Entries } from './entries';
import { lockModel } from './modelLock';
import type { PageMemory } from './pageMemory';
import { isOwnWork, isSampleId, sampleId, type ShelfFile, type ShelfWork } from './record';
import { createSaveTally } from './saveTally';
import type { SaveState } from '../../../present/page/saveState';
import { reasonText } from '../reasonText';

/** Milliseconds that a change waits at most to be written, even while others follow. */
const soon = 30;

/** The parts of the page that are kept. */
export interface KeptParts {
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly choice: KeptChoice;
}

interface WriterOptions {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  readonly entries: Entries;
  readonly first: SaveState;
  /** Called with work that is on the disk. */
  readonly onWritten: (work: ShelfWork) => void;
}

/** Writes the current work to the shelf. */
export interface Writer {
  readonly state: Accessor<SaveState>;
  /** Notes a change, which is written soon. */
  readonly change: () => void;
  /** Writes what waits, stops writing, and opens another model of the shelf in this page's place. */
  readonly leaveFor: (id: string) => void;
  /** Writes what waits at once. */
  readonly flush: () => void;
  /** For a page that is left: unconfirmed work is also put into the page's memory, which is written synchronously. */
  readonly leave: () => void;
}

/** The current work under its id on the shelf; an unchanged shipped model has a fixed id and no entry. */
function workNow({ store, drafts, choice }: KeptParts, entries: Entries): ShelfWork {
  const { name, shipped, bytes, file } = store.origin();
  const { sheet, title } = store.model();
  const { id, isCopy, isOnShelf } = entries.now();
  const layout = layoutOf(file.sheet, sheet);
  const kept = { changes: changesOf(file.sheet, sheet), layout, drafts: drafts.all(), choice: choice.kept() };
  const isLoose = shipped !== '' && !isOnShelf && !isOwnWork(kept);
  const version = layout === undefined ? 2 : 3;
  const head = { version, id: isLoose ? sampleId(shipped) : id, name, title, shipped } as const;
  return { ...head, size: bytes.length, isCopy, ...kept, at: Date.now() };
}

/** The file of the model now open where the database lacks it; it is then marked as stored. */
function newFile({ store }: KeptParts, entries: Entries, id: string): ShelfFile | undefined {
  const entry = entries.now();
  if (isSampleId(id) || entry.isOnShelf) return undefined;
  entry.lock ??= lockModel(id);
  entry.isOnShelf = true;
  const { name, shipped, opened, bytes } = store.origin();
  return { version: 2, id, name, shipped, opened, bytes };
}

export function createWriter(parts: KeptParts, options: WriterOptions): Writer {
  const { database, memory, entries } = options;
  const tally = createSaveTally(options.first);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isLeft = false;

  const confirm = (work: ShelfWork, until: number): void => {
    memory.setLastMoment(work.id, undefined);
    options.onWritten(work);
    tally.confirm(until, isSampleId(work.id) ? { state: 'nothing' } : { state: 'kept', at: new Date(work.at) });
  };
  const write = (): void => {
    clearTimeout(timer);
    timer = undefined;
    const [work, until, entry] = [workNow(parts, entries), tally.count(), entries.now()];
    const file = newFile(parts, entries, work.id);
    memory.setModel(work.id);
    database.write(work, file).then(
      () => confirm(work, until),
      (reason: unknown) => {
        if (file !== undefined) entry.isOnShelf = false;
        tally.fail(reasonText(reason));
      },
    );
  };
  const flush = (): void => {
    if (timer !== undefined) write();
  };
  const leave = (): void => {
    if (tally.isBehind() && !isLeft) {
      const work = workNow(parts, entries);
      memory.setLastMoment(work.id, JSON.stringify(work));
    }
    flush();
  };
  return {
    state: tally.state,
    change: () => {
      if (isLeft) return;
      tally.change();
      timer ??= setTimeout(write, soon);
    },
    flush,
    leaveFor: (id) => {
      leave();
      isLeft = true;
      memory.setModel(id);
      location.reload();
    },
    leave,
  };
}
