import { createSignal, type Accessor } from 'solid-js';
import type { Sheet } from '../../../model/sheet';
import { snapshotOfSheet, type Origin, type Snapshot } from './snapshot';

/** Steps that undo can take back. */
const longestPast = 1000;
/** Of these, as many as hold their model and values, some 10 kB each; from the others' sheets these are made again. */
const wholeMoments = 100;

/** A moment to which undo or redo returns. One that was kept is only a sheet until then. */
type Moment = Snapshot | { readonly origin: Origin; readonly sheet: Sheet };

/** The states of the present model before and after the present one, the earliest first. */
export interface Trail {
  readonly past: readonly Sheet[];
  readonly future: readonly Sheet[];
}

function sheetOf(moment: Moment): Sheet {
  return 'model' in moment ? moment.model.sheet : moment.sheet;
}

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
  /** Takes no steps while something is done. */
  readonly quietly: (deed: () => void) => void;
  readonly trail: () => Trail;
  /**
   * Puts states that were kept before and after a state of the present model, with which its moments here begin; false
   * where they do not.
   */
  readonly bringBack: (from: Sheet, kept: Trail) => boolean;
}

/** The states of a model among the moments around it: up to where another was open. */
function trailOf({ origin }: Snapshot, past: readonly Moment[], future: readonly Moment[]): Trail {
  const own = (moments: readonly Moment[]): Sheet[] =>
    moments.slice(moments.findLastIndex((moment) => moment.origin !== origin) + 1).map(sheetOf);
  return { past: own(past), future: own(future).reverse() };
}

/** The same moments; the one that leaves the last `wholeMoments` lets its model and values go. */
function thinned(moments: Moment[]): readonly Moment[] {
  const place = moments.length - 1 - wholeMoments;
  const moment = moments[place];
  if (moment !== undefined) moments[place] = { origin: moment.origin, sheet: sheetOf(moment) };
  return moments;
}

export function createHistory(first: Snapshot): History {
  const [snapshot, setSnapshot] = createSignal(first);
  const [before, setBefore] = createSignal(first);
  const [past, setPast] = createSignal<readonly Moment[]>([]);
  const [future, setFuture] = createSignal<readonly Moment[]>([]);
  let editing = false;
  let isQuiet = false;
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
      setBefore(snapshot());
      if (isQuiet) return;
      setPast((steps) => thinned([...steps.slice(1 - longestPast), snapshot()]));
      setFuture([]);
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
      set('model' in target ? target : snapshotOfSheet(target.sheet, target.origin, now.model));
    },
    set,
    quietly: (deed) => {
      isQuiet = true;
      deed();
      isQuiet = false;
    },
    trail: () => trailOf(snapshot(), past(), future()),
    bringBack: (from, kept) => {
      const { origin } = snapshot();
      const [first = snapshot()] = past();
      if (first.origin !== origin || sheetOf(first) !== from) return false;
      const moment = (sheet: Sheet): Moment => ({ origin, sheet });
      if (past().length + future().length === 0) setFuture(kept.future.map(moment).reverse());
      setPast((steps) => [...kept.past.map(moment), ...steps]);
      return true;
    },
  };
}
