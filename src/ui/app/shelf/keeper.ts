import { createEffect, on, onCleanup, untrack, type Accessor } from 'solid-js';
import { openAnnouncements } from './announcements';
import type { Beginning } from './beginning';
import type { ShelfDatabase } from './database';
import { createEntries } from './entries';
import { createFollowing, type Following } from './following';
import type { PageMemory } from './pageMemory';
import { isSampleId, type ShelfWork } from './record';
import { createSavings } from './savings';
import { storageFault } from './storageFault';
import { shelfTexts } from '../../../present/page/shelfTexts';
import type { SaveState } from '../../../present/page/saveState';
import { workNow, type KeptParts } from './workNow';
import { createWriter, type Writer } from './writer';

/** The storage for the work, and a way to say something. */
export interface KeeperOptions {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  readonly beginning: Beginning;
  /** Says something about the keeping, as that the model becomes a copy. */
  readonly say: (text: string) => void;
}

/** Keeps this page's work on the shelf. */
export interface Keeper {
  readonly state: Accessor<SaveState>;
  /** Id of the model now open. */
  readonly id: () => string;
  /** Whether this page has a model open, or can return to it by undo. */
  readonly has: (id: string) => boolean;
  /** Leaves this page for another model of the shelf. */
  readonly open: (id: string) => void;
  /** Makes a version of the model now open. */
  readonly saveVersion: () => Promise<void>;
  /** Says why none could be made. */
  readonly sayNoVersion: (reason: unknown) => void;
  /** Writes nothing any more, until what it gives back is called. */
  readonly stop: () => () => void;
  /** Notes that a model was deleted, and tells other pages. */
  readonly removed: (id: string) => void;
  /** Writes what waits at once, before this page is loaded again. */
  readonly flush: () => void;
}

/**
 * Keeps the work on the shelf, also while somebody types. A model that another page writes is followed until the first
 * change made here, with which it becomes a copy.
 */
export function createKeeper(parts: KeptParts, options: KeeperOptions): Keeper {
  const { database, memory, beginning } = options;
  const entries = createEntries(parts.store, beginning);
  const following = createFollowing(parts, { ...options, entries, isBehind: () => writer.isBehind() });
  const { hear, setGone, gone } = following;
  const announcements = openAnnouncements(hear);
  const sayNoVersion = (reason: unknown): void => options.say(shelfTexts.noVersion(storageFault(reason)));
  const savings = createSavings({
    database,
    store: parts.store,
    now: () => (untrack(following.now) ? undefined : workNow(parts, entries)),
    failed: sayNoVersion,
    again: () => changeAgain(following, writer),
  });
  const writer = createWriter(parts, {
    database,
    memory,
    entries,
    first: firstState(beginning),
    steps: savings,
    onWritten: (work) => {
      if (work.id === untrack(gone)) setGone('');
      announcements.tell({ kind: 'written', work });
      savings.written(work);
    },
  });
  listenForChanges(parts, following, writer);
  void settle(beginning, following, writer, savings.bringBack);
  const leaveFor = (id: string): void => {
    writer.leave();
    writer.stop();
    memory.setModel(id);
    location.reload();
  };
  const leave = (): void => {
    writer.leave();
    savings.leave();
    announcements.tell({ kind: 'left', id: entries.now().id });
  };
  listenForLeaving(leave, writer.flush);
  onCleanup(announcements.close);
  return {
    state: () => {
      if (gone() !== '' && gone() === entries.now().id) return { state: 'gone' };
      return following.now() ? { state: 'following' } : writer.state();
    },
    id: () => entries.now().id,
    has: entries.has,
    open: leaveFor,
    flush: writer.flush,
    saveVersion: savings.save,
    sayNoVersion,
    stop: writer.stop,
    removed: (id) => {
      memory.setLastMoment(id, undefined);
      entries.forget(id);
      announcements.tell({ kind: 'removed', id });
    },
  };
}

/** Writes again what could not be written, or not whole, unless another page writes the model by now. */
function changeAgain(following: Following, writer: Writer): void {
  if (!untrack(following.now)) writer.change();
}

/** Writes what waits in the page's memory, as soon as this page is the one that writes the model. */
async function settle(
  { isFollowing, lock, work }: Beginning,
  following: Following,
  writer: Writer,
  bringBack: (work: ShelfWork) => Promise<void>,
): Promise<void> {
  let last = work;
  if (isFollowing) {
    // Another page may have written after this one read the model and before it listened for announcements.
    void following.catchUp();
    await lock?.later;
    last = await following.end();
  }
  if (untrack(following.now)) return;
  // Without the steps of the work before, undo begins with this page.
  if (last?.steps !== undefined) await bringBack(last).catch(() => undefined);
  writer.settle();
}

/** Calls back as the page is left, or out of sight, where the browser may end it without a word. */
function listenForLeaving(leave: () => void, hide: () => void): void {
  addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', hide);
  onCleanup(() => {
    hide();
    removeEventListener('pagehide', leave);
    document.removeEventListener('visibilitychange', hide);
  });
}

/** Tells the writer of each change that a person makes here; with the first one a followed model becomes a copy. */
function listenForChanges({ store, drafts, choice }: KeptParts, following: Following, writer: Writer): void {
  let last = untrack(store.origin);
  const changed = (isWork: boolean): void => {
    const isOpening = untrack(store.origin) !== last;
    last = untrack(store.origin);
    if (following.isShowing()) return;
    if (untrack(following.now)) {
      if (isOpening) {
        writer.rest();
        void following.catchUp();
        return;
      }
      if (!isWork) return;
      following.part();
    }
    writer.change();
  };
  createEffect(
    on(
      () => [store.version(), drafts.all()],
      () => changed(true),
      { defer: true },
    ),
  );
  createEffect(
    on(
      () => choice.kept(),
      () => changed(false),
      { defer: true },
    ),
  );
}

function firstState({ failure, work }: Beginning): SaveState {
  if (failure !== '') return { state: 'failed', reason: failure };
  if (work === undefined || isSampleId(work.id)) return { state: 'nothing' };
  return { state: 'kept', at: new Date(work.at) };
}
