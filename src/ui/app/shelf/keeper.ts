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

/** Where the work is kept, and who is told. */
export interface KeeperOptions {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  readonly beginning: Beginning;
  /** A change was made beside the page that writes the model: from now on it is a copy. */
  readonly onCopied: () => void;
}

/** The work of this page on the shelf. */
export interface Keeper {
  readonly state: Accessor<SaveState>;
  /** Of the model now open. */
  readonly id: () => string;
  /** Opens another model of the shelf in this page's place. */
  readonly open: (id: string) => void;
}

/**
 * Keeps the work on the shelf while somebody types. A model that another page writes is followed, and becomes a copy
 * with the first change made here.
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
    // What was written between reading the model and listening.
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
  };
}

/** Shows work on the model now open as another page has written it. */
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
