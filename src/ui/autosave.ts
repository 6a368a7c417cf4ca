import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';
import type { KeptChoice } from './choice';
import type { Drafts } from './drafts';
import type { Keep } from './keep';
import type { Live } from './live';
import { changesOf, type Progress, type Session } from './session';

/** Whether the work is kept on this machine, and since when. */
export type Kept =
  | { readonly state: 'kept'; readonly at: Date }
  | { readonly state: 'failed'; readonly reason: string }
  | { readonly state: 'not yet' };

/** Milliseconds without a change after which the work is written. */
const pause = 300;

interface Parts {
  readonly live: Live;
  readonly drafts: Drafts;
  readonly choice: KeptChoice;
}

function progressOf({ live, drafts, choice }: Parts, at: number): Progress {
  const { opened, file } = live.origin();
  const changes = changesOf(file.sheet, live.model().sheet);
  return { version: 1, opened, changes, drafts: drafts.all(), choice: choice.kept(), at };
}

function sessionOf(parts: Parts, at: number): Session {
  const { name, shipped, bytes } = parts.live.origin();
  return { ...progressOf(parts, at), name, shipped, bytes };
}

/** What is said of a rejection's reason. */
export function reasonText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

/** Writes the work after each pause and when the page is hidden; when it is left, what was done since at once. */
export function createAutosave(parts: Parts, keep: Keep, first: Kept = { state: 'not yet' }): Accessor<Kept> {
  const [kept, setKept] = createSignal<Kept>(first);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let written = parts.live.origin();
  /** Changes so far, and how many of them the storage has confirmed. */
  let [changes, confirmed] = [0, 0];

  const write = (): void => {
    clearTimeout(timer);
    timer = undefined;
    written = parts.live.origin();
    const [at, until] = [new Date(), changes];
    keep.write(sessionOf(parts, at.getTime())).then(
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
    if (confirmed < changes) keep.writeLast(JSON.stringify(progressOf(parts, Date.now())));
    flush();
  };

  createEffect(
    on(
      () => [parts.live.version(), parts.drafts.all(), parts.choice.kept()],
      () => {
        changes += 1;
        clearTimeout(timer);
        timer = setTimeout(write, pause);
        if (parts.live.origin() !== written) write();
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
