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

/** Longest that a change waits for its writing, also while others follow, in milliseconds. */
const soon = 30;

/** What is kept. */
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
  /** Is called with what is on the disk. */
  readonly onWritten: (work: ShelfWork) => void;
}

/** Writes the work as it stands. */
export interface Writer {
  readonly state: Accessor<SaveState>;
  /** Something changed: it is written soon. */
  readonly change: () => void;
  /** Opens another model of the shelf in this page's place: writes what waits, and nothing after that. */
  readonly leaveFor: (id: string) => void;
  /** Writes at once what waits. */
  readonly flush: () => void;
  /** The page is left: what is not confirmed yet is also put where nothing needs to be waited for. */
  readonly leave: () => void;
}

/** The work as it stands, under its place; that on a shipped model in which nothing was changed has none. */
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

/** The file of the model now open, where the shelf does not have it yet; from now on it is to have it. */
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
