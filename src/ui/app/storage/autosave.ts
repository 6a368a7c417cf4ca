import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';
import type { SaveState } from '../../../present/page/saveState';
import type { KeptChoice } from '../preferences/choice';
import type { Drafts } from '../store/drafts';
import type { BrowserStorage } from './browserStorage';
import type { ModelStore } from '../store/modelStore';
import { changesOf, type KeptProgress, type KeptSession } from './session';

/** Milliseconds without a change after which the work is written. */
const pause = 300;

interface Parts {
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly choice: KeptChoice;
}

function progressOf({ store, drafts, choice }: Parts, at: number): KeptProgress {
  const { opened, file } = store.origin();
  const changes = changesOf(file.sheet, store.model().sheet);
  return { version: 1, opened, changes, drafts: drafts.all(), choice: choice.kept(), at };
}

function sessionOf(parts: Parts, at: number): KeptSession {
  const { name, shipped, bytes } = parts.store.origin();
  return { ...progressOf(parts, at), name, shipped, bytes };
}

/** What is said of a rejection's reason. */
export function reasonText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

/** Writes the work after each pause and when the page is hidden; when it is left, what was done since at once. */
export function createAutosave(
  parts: Parts,
  storage: BrowserStorage,
  first: SaveState = { state: 'not yet' },
): Accessor<SaveState> {
  const [kept, setKept] = createSignal<SaveState>(first);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let written = parts.store.origin();
  /** Changes so far, and how many of them the storage has confirmed. */
  let [changes, confirmed] = [0, 0];

  const write = (): void => {
    clearTimeout(timer);
    timer = undefined;
    written = parts.store.origin();
    const [at, until] = [new Date(), changes];
    storage.write(sessionOf(parts, at.getTime())).then(
      () => {
        confirmed = until;
        setKept({ state: 'kept', at });
      },
      (reason: unknown) => setKept({ state: 'failed', reason: reasonText(reason) }),
    );
  };
  const flush = (): void => {
    if (timer !== undefined) write();
  };
  // A page that is left may be gone before the slower storage has answered, also to what was written before.
  const leave = (): void => {
    if (confirmed < changes) storage.writeLast(JSON.stringify(progressOf(parts, Date.now())));
    flush();
  };

  createEffect(
    on(
      () => [parts.store.version(), parts.drafts.all(), parts.choice.kept()],
      () => {
        changes += 1;
        clearTimeout(timer);
        timer = setTimeout(write, pause);
        if (parts.store.origin() !== written) write();
      },
      { defer: true },
    ),
  );
  write();

  addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', flush);
  onCleanup(() => {
    flush();
    removeEventListener('pagehide', leave);
    document.removeEventListener('visibilitychange', flush);
  });
  return kept;
}
