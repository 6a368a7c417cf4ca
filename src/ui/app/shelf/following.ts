import { createSignal, untrack, type Accessor } from 'solid-js';
import { shelfTexts } from '../../../present/page/shelfTexts';
import { storageFault } from './storageFault';
import type { Origin } from '../store/snapshot';
import type { Announcement } from './announcements';
import type { Beginning } from './beginning';
import { changesOf, layoutOf, withChanges } from './changes';
import type { ShelfDatabase } from './database';
import type { Entries } from './entries';
import { carriedOn } from './lastMoment';
import { hasLocks } from './modelLock';
import type { PageMemory } from './pageMemory';
import { isShelfWork, type ShelfWork } from './record';
import type { KeptParts } from './workNow';

interface FollowingOptions {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  readonly entries: Entries;
  readonly beginning: Beginning;
  /** Whether changes made here wait to be written. */
  readonly isBehind: () => boolean;
  /** Says something that concerns the person at this page. */
  readonly say: (text: string) => void;
}

/** Shows what another page writes, where that page writes the model open here. */
export interface Following {
  /** Whether the model now open is written by another page. */
  readonly now: Accessor<boolean>;
  /** Id of a model that another page has deleted; blank where there is none. */
  readonly gone: Accessor<string>;
  /** Whether a change now is one that this page shows, not one that a person makes here. */
  readonly isShowing: () => boolean;
  readonly hear: (said: Announcement) => void;
  /** Reads what another page has written meanwhile, and gives it. */
  readonly catchUp: () => Promise<ShelfWork | undefined>;
  /** Gives the model now open an entry of its own, with which it is no longer followed. */
  readonly part: () => void;
  /** No other page writes the model any more: it is this page's once it is up to date. */
  readonly end: () => Promise<ShelfWork | undefined>;
  readonly setGone: (id: string) => void;
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

export function createFollowing(parts: KeptParts, options: FollowingOptions): Following {
  const { database, memory, entries, isBehind, say } = options;
  const { store } = parts;
  // Another file can be opened meanwhile, and undo returns: only the very model is followed.
  const [followed, setFollowed] = createSignal<Origin | undefined>(
    options.beginning.isFollowing ? untrack(store.origin) : undefined,
  );
  const [gone, setGone] = createSignal('');
  let isShowing = false;
  /** Whether the other page has left the model. */
  let isFree = false;
  const now = (): boolean => followed() !== undefined && followed() === store.origin();
  const show = (work: ShelfWork): void => {
    if (!untrack(now) || work.id !== entries.now().id) return;
    isShowing = true;
    store.quietly(() => showWork(parts, work));
    isShowing = false;
  };
  const part = (): void => {
    entries.copy();
    setFollowed(undefined);
    say(shelfTexts.copied);
  };
  const written = (work: ShelfWork): void => {
    if (work.id === untrack(gone)) setGone('');
    // Without locks nothing else tells that two pages write one model: the one that hears of the other gives way.
    if (!hasLocks() && !untrack(now) && work.id === entries.now().id) {
      if (isBehind()) return part();
      setFollowed(untrack(store.origin));
    }
    isFree = false;
    show(work);
  };
  const catchUp = async (): Promise<ShelfWork | undefined> => {
    if (!untrack(now)) return undefined;
    // What is read before the other page has left may not be the last that it wrote.
    const wasFree = isFree;
    const { id } = entries.now();
    try {
      const { work } = await database.read(id);
      const last = isShelfWork(work) ? carriedOn(work, memory.lastMoment(id)) : undefined;
      if (last !== undefined) show(last);
      if (wasFree) setFollowed(undefined);
      return last;
    } catch (reason) {
      say(shelfTexts.notRead(storageFault(reason)));
      return undefined;
    }
  };
  const end = (): Promise<ShelfWork | undefined> => {
    isFree = true;
    return catchUp();
  };
  const hear = (said: Announcement): void => {
    if (said.kind === 'written') written(said.work);
    else if (said.kind === 'left') {
      if (!hasLocks() && said.id === entries.now().id) void end();
    } else {
      entries.forget(said.id);
      setGone(said.id);
    }
  };
  return { now, gone, isShowing: () => isShowing, hear, catchUp, part, end, setGone };
}
