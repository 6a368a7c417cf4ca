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
 * Holds the model and its history as Solid signals. Each cell in each plan has its own signal, so that an edit updates
 * only rows whose value changed.
 */
export interface ModelStore {
  /** The model now; changes with every edit. */
  readonly model: Accessor<Model>;
  /**
   * The model as of the last change of anything but an input's number. For readers of labels, units, ranges and
   * formulas, which are so not updated with each keystroke in a number. Its numbers may be old.
   */
  readonly shape: Accessor<Model>;
  /** The faults and the notices of the model; they change only when they differ. */
  readonly faults: Accessor<readonly Problem[]>;
  readonly notices: Accessor<readonly Problem[]>;
  /** The exact values of every plan now, for charts and studies; changes with every edit. */
  readonly values: Accessor<readonly Values[]>;
  /** Where the model came from; changes when another is opened. */
  readonly origin: Accessor<Origin>;
  /** What a cell shows in a plan; updates its reader only when that changes. */
  shown(plan: number, cell: number): ShownValue;
  /** The cell's number before the edit under way, or before the last finished one. */
  before(plan: number, cell: number): Decimal;
  /** Changes one field at once; all edits until `finish` are one step for undo. */
  edit(change: Edit): void;
  /** The same with an edit that is computed already. */
  put(change: Edited): void;
  /** Ends the edit under way. */
  finish(): void;
  undo(): void;
  redo(): void;
  readonly canUndo: Accessor<boolean>;
  readonly canRedo: Accessor<boolean>;
  /** Opens another model in place of this one; undo brings this one back. */
  open(snapshot: Snapshot): void;
  /** Counts edits, openings, undo and redo. */
  readonly version: Accessor<number>;
}

/** Most steps that undo can take back. */
const longestPast = 1000;

/** The current snapshot, with those before and after it for undo and redo. */
interface History {
  readonly snapshot: Accessor<Snapshot>;
  /** The snapshot with which shown changes compare. */
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
  // Values are not compared with those of another model.
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

/** Whether only numbers differ: such a change keeps the arrays of cells and lines. */
function sameShape(a: Model, b: Model): boolean {
  return a.cells === b.cells && a.lines === b.lines;
}

/** Makes the store of a model. */
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
