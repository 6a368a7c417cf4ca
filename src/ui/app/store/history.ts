import { createSignal, type Accessor } from 'solid-js';
import type { Snapshot } from './snapshot';

/** Steps that undo can take back. */
const longestPast = 1000;

/** The moments before and after the present one. */
interface History {
  readonly snapshot: Accessor<Snapshot>;
  /** The moment that changes are told against. */
  readonly before: Accessor<Snapshot>;
  readonly canUndo: Accessor<boolean>;
  readonly canRedo: Accessor<boolean>;
  /** Begins a step, unless one is under way. */
  begin(): void;
  finish(): void;
  /** Undo (back) or redo. */
  go(back: boolean): void;
  set(next: Snapshot): void;
}

export function createHistory(first: Snapshot): History {
  const [snapshot, setSnapshot] = createSignal(first);
  const [before, setBefore] = createSignal(first);
  const [past, setPast] = createSignal<readonly Snapshot[]>([]);
  const [future, setFuture] = createSignal<readonly Snapshot[]>([]);
  let editing = false;
  // Another model's values are nothing to compare with.
  const set = (next: Snapshot): void => {
    if (next.origin !== snapshot().origin) setBefore(next);
    setSnapshot(next);
  };
  return {
    snapshot,
    before,
    canUndo: () => past().length > 0,
    canRedo: () => future().length > 0,
    begin: () => {
      if (editing) return;
      setPast((steps) => [...steps.slice(1 - longestPast), snapshot()]);
      setFuture([]);
      setBefore(snapshot());
      editing = true;
    },
    finish: () => {
      editing = false;
    },
    go: (back) => {
      const target = (back ? past : future)().at(-1);
      if (target === undefined) return;
      const now = snapshot();
      const [setFrom, setTo] = back ? [setPast, setFuture] : [setFuture, setPast];
      editing = false;
      setFrom((steps) => steps.slice(0, -1));
      setTo((steps) => [...steps, now]);
      setBefore(now);
      set(target);
    },
    set,
  };
}
