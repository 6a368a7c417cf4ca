import type { ShownValue } from '../../../present/numbers/shownValue';
import { batch, createSignal, untrack, type Accessor } from 'solid-js';
import type { Decimal } from '../../../core/number';
import type { Problem } from '../../../core/problem';
import { edit as edited, type Edit, type Edited } from '../../../model/edit';
import type { Model } from '../../../model/model';
import type { Values } from '../../../model/values';
import { CellSignals, unknownNumber } from './cellSignals';
import { snapshotAfter, snapshotOf, type Snapshot, type Origin } from './snapshot';

/**
 * The only bridge from a model to Solid: a signal for each cell and plan, so that an edit wakes no more than the rows
 * whose value moved.
 */
export interface ModelStore {
  /** The model now; changes with every edit. */
  readonly model: Accessor<Model>;
  /**
   * The model as it was when anything but an input's number last changed: wakes its readers for labels, units, ranges,
   * formulas, and what fills an entry, not for each keystroke in a number. The numbers in it may be old.
   */
  readonly shape: Accessor<Model>;
  /** What is wrong with the model, and what a reader should know; wake their readers only when they are others. */
  readonly faults: Accessor<readonly Problem[]>;
  readonly notices: Accessor<readonly Problem[]>;
  /** The exact values of every plan now, for charts and studies; changes with every edit. */
  readonly values: Accessor<readonly Values[]>;
  /** Where the model came from; changes when another is opened. */
  readonly origin: Accessor<Origin>;
  /** What a cell shows in a plan; wakes its reader only when that moved. */
  shown(plan: number, cell: number): ShownValue;
  /** What it showed before the edit under way, or before the last finished one. */
  before(plan: number, cell: number): Decimal;
  /** Changes one field at once; what follows until `finish` is one step for undo. */
  edit(change: Edit): void;
  /** The same with an edit of the present model that has been worked out already. */
  put(change: Edited): void;
  /** Ends the edit under way. */
  finish(): void;
  undo(): void;
  redo(): void;
  readonly canUndo: Accessor<boolean>;
  readonly canRedo: Accessor<boolean>;
  /** Puts another model in place; undo brings the one before back. */
  open(snapshot: Snapshot): void;
  /** Counts edits, openings, undo and redo; for whatever must follow each of them. */
  readonly version: Accessor<number>;
}

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

function createHistory(first: Snapshot): History {
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

function sameProblems(a: readonly Problem[], b: readonly Problem[]): boolean {
  return a.length === b.length && a.every((one, i) => one === b[i]);
}

/** A change of a number alone keeps the cells and lines of the model before. */
function sameShape(a: Model, b: Model): boolean {
  return a.cells === b.cells && a.lines === b.lines;
}

/** Brings a model to life. */
export function createModelStore(initial: Model, first: Origin): ModelStore {
  const history = createHistory(snapshotOf(initial, first));
  const [origin, setOrigin] = createSignal(first);
  const [signals, setSignals] = createSignal(new CellSignals(history.snapshot()));
  const [shape, setShape] = createSignal(initial, { equals: sameShape });
  const [faults, setFaults] = createSignal(initial.faults, { equals: sameProblems });
  const [notices, setNotices] = createSignal(initial.notices, { equals: sameProblems });
  const [version, setVersion] = createSignal(0);

  const show = (next: Snapshot, old: Snapshot): void => {
    if (next.origin === old.origin && signals().fits(next)) signals().show(next, old);
    else setSignals(new CellSignals(next));
    setOrigin(next.origin);
    setShape(next.model);
    setFaults(next.model.faults);
    setNotices(next.model.notices);
    setVersion((count) => count + 1);
  };
  const move = (change: () => void): void =>
    batch(() => {
      const old = untrack(history.snapshot);
      change();
      const next = untrack(history.snapshot);
      if (next !== old) show(next, old);
    });
  const step = (back: boolean): void => move(() => history.go(back));
  const put = (change: Edited): void =>
    move(() => {
      history.begin();
      history.set(snapshotAfter(history.snapshot(), change));
    });

  return {
    model: () => history.snapshot().model,
    shape,
    faults,
    notices,
    values: () => history.snapshot().values,
    origin,
    shown: (plan, cell) => signals().read(plan, cell),
    before: (plan, cell) => history.before().values[plan]?.numbers[cell] ?? unknownNumber,
    edit: (change) => put(edited(history.snapshot().model, change)),
    put,
    finish: () => history.finish(),
    undo: () => step(true),
    redo: () => step(false),
    canUndo: history.canUndo,
    canRedo: history.canRedo,
    open: (snapshot) =>
      move(() => {
        history.finish();
        history.begin();
        history.finish();
        history.set(snapshot);
      }),
    version,
  };
}
