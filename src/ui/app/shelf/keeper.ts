import { createEffect, createSignal, on, onCleanup, untrack, type Accessor } from 'solid-js';
import { openAnnouncements } from './announcements';
import type { Beginning } from './beginning';
import { changesOf, layoutOf, withChanges } from './changes';
import type { ShelfDatabase } from './database';
import { createEntries } from './entries';
import type { PageMemory } from './pageMemory';
import { isSampleId, isShelfWork, type ShelfWork } from './record';
import type { SaveState } from '../../../present/page/saveState';
import { createWriter, type KeptParts } from './writer';

/** The storage for the work, and a callback. */
export interface KeeperOptions {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  readonly beginning: Beginning;
  /** Called when the model becomes a copy, by a change while another page writes the model. */
  readonly onCopied: () => void;
}

/** Keeps this page's work on the shelf. */
export interface Keeper {
  readonly state: Accessor<SaveState>;
  /** Id of the model now open. */
  readonly id: () => string;
  /** Leaves this page for another model of the shelf. */
  readonly open: (id: string) => void;
  /** Writes what waits at once, before this page is loaded again. */
  readonly flush: () => void;
}

/**
 * Keeps the work on the shelf, also while somebody types. A model that another page writes is followed until the first
 * change made here, with which it becomes a copy.
 */
export function createKeeper(parts: KeptParts, options: KeeperOptions): Keeper {
  const { database, memory, beginning } = options;
  const [following, setFollowing] = createSignal(beginning.isFollowing);
  const entries = createEntries(parts.store, beginning);
  let isShowing = false;
  const show = (work: ShelfWork): void => {
    if (!untrack(following) || work.id !== entries.now().id) return;
    isShowing = true;
    showWork(parts, work);
    isShowing = false;
  };
  const announcements = openAnnouncements(show);
  const first = firstState(beginning);
  const writer = createWriter(parts, { database, memory, entries, first, onWritten: announcements.tell });
  const changed = (isWork: boolean): void => {
    if (isShowing || (untrack(following) && !isWork)) return;
    if (untrack(following)) {
      entries.copy();
      setFollowing(false);
      options.onCopied();
    }
    writer.change();
  };
  createEffect(
    on(
      () => [parts.store.version(), parts.drafts.all()],
      () => changed(true),
      { defer: true },
    ),
  );
  createEffect(
    on(
      () => parts.choice.kept(),
      () => changed(false),
      { defer: true },
    ),
  );
  if (beginning.isFollowing) {
    void beginning.lock?.later.then(() => setFollowing(false));
    // Another page may have written after this one read the model and before it listened for announcements.
    void database.read(entries.now().id).then(({ work }) => {
      if (isShelfWork(work)) show(work);
    });
  }
  addEventListener('pagehide', writer.leave);
  document.addEventListener('visibilitychange', writer.flush);
  onCleanup(() => {
    writer.flush();
    announcements.close();
    removeEventListener('pagehide', writer.leave);
    document.removeEventListener('visibilitychange', writer.flush);
  });
  return {
    state: () => (following() ? { state: 'following' } : writer.state()),
    id: () => entries.now().id,
    open: writer.leaveFor,
    flush: writer.flush,
  };
}

/** Applies the work that another page has written to the model now open. */
function showWork({ store, drafts }: KeptParts, work: ShelfWork): void {
  const [now, next] = [store.model().sheet, withChanges(store.origin().file.sheet, work)];
  if (layoutOf(now, next) !== undefined) store.replace(next);
  else for (const [row, column, text] of changesOf(now, next)) store.edit({ row, column, text });
  store.finish();
  for (const [row, column] of drafts.all()) drafts.set({ row, column }, undefined);
  for (const [row, column, text] of work.drafts) drafts.set({ row, column }, text);
}

function firstState({ failure, work }: Beginning): SaveState {
  if (failure !== '') return { state: 'failed', reason: failure };
  if (work === undefined || isSampleId(work.id)) return { state: 'nothing' };
  return { state: 'kept', at: new Date(work.at) };
}
