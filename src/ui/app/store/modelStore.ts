import type { ShownValue } from '../../../present/numbers/shownValue';
import { batch, createSignal, untrack, type Accessor } from 'solid-js';
import { createHistory, type Trail } from './history';
import type { Decimal } from '../../../core/number';
import type { Problem } from '../../../core/problem';
import { edit as edited, type Edit, type Edited } from '../../../model/edit';
import type { Model } from '../../../model/model';
import { buildModel } from '../../../model/buildModel';
import type { Sheet } from '../../../model/sheet';
import { ownFigure } from './ownFigure';
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
  /**
   * What is wrong with the model, what a reader should know, and which numbers stand outside their range, which is no
   * fault of theirs; wake their readers only when they are others.
   */
  readonly faults: Accessor<readonly Problem[]>;
  readonly outside: Accessor<readonly Problem[]>;
  readonly notices: Accessor<readonly Problem[]>;
  /** The exact values of every plan now, for charts and studies; changes with every edit. */
  readonly values: Accessor<readonly Values[]>;
  /** Where the model came from; changes when another is opened. */
  readonly origin: Accessor<Origin>;
  /** What a cell shows in a plan; wakes its reader only when that moved. */
  shown(plan: number, cell: number): ShownValue;
  /** What it showed before the edit under way, or before the last finished one. */
  before(plan: number, cell: number): Decimal;
  /** All values then; undefined where another model or another shape of this one was open. */
  readonly valuesBefore: () => readonly Values[] | undefined;
  /** Changes one field at once; what follows until `finish` is one step for undo. */
  edit(change: Edit): void;
  /** The same for a figure that a person gives: where it comes from is changed with it. */
  readonly enter: (change: Edit) => void;
  /** Puts another sheet in the model's place: entries, plans or names changed. A step of its own for undo. */
  readonly replace: (sheet: Sheet) => void;
  /** The same with an edit of the present model that has been worked out already. */
  put(change: Edited): void;
  /** Ends the edit under way. */
  finish(): void;
  undo(): void;
  redo(): void;
  readonly canUndo: Accessor<boolean>;
  readonly canRedo: Accessor<boolean>;
  /** Changes in it are another page's, of which undo takes back none. */
  readonly quietly: (changes: () => void) => void;
  /** The states of this model to which undo and redo return. */
  readonly trail: () => Trail;
  /** Puts kept states around the one with which this page began; false where it began with another. */
  readonly bringBack: (from: Sheet, kept: Trail) => boolean;
  /** Puts another model in place; undo brings the one before back. */
  open(snapshot: Snapshot): void;
  /** Counts edits, openings, undo and redo; for whatever must follow each of them. */
  readonly version: Accessor<number>;
}

function sameProblems(a: readonly Problem[], b: readonly Problem[]): boolean {
  return a.length === b.length && a.every((one, i) => one === b[i]);
}

function isOutside({ code }: Problem): boolean {
  return code === 'range-value';
}

function isFault(found: Problem): boolean {
  return !isOutside(found);
}

/** A change of a number alone keeps the cells and lines of the model before. */
function sameShape(a: Model, b: Model): boolean {
  return a.cells === b.cells && a.lines === b.lines;
}

function rebuilt({ reading }: Model, sheet: Sheet): Edited {
  return { model: buildModel(sheet, reading), changed: undefined };
}

/** What readers of the page are woken by, each only when it is another. */
function createSignals({ model, origin: first }: Snapshot) {
  const [shape, setShape] = createSignal(model, { equals: sameShape });
  const [origin, setOrigin] = createSignal(first);
  const [faults, setFaults] = createSignal(model.faults.filter(isFault), { equals: sameProblems });
  const [outside, setOutside] = createSignal(model.findings.ranges.filter(isOutside), { equals: sameProblems });
  const [notices, setNotices] = createSignal(model.notices, { equals: sameProblems });
  const [version, setVersion] = createSignal(0);
  const show = ({ model: next, origin: from }: Snapshot): void => {
    setOrigin(from);
    setShape(next);
    setFaults(next.faults.filter(isFault));
    setOutside(next.findings.ranges.filter(isOutside));
    setNotices(next.notices);
    setVersion((count) => count + 1);
  };
  return { shape, origin, faults, outside, notices, version, show };
}

/** What a cell of the present model showed at an earlier moment, where entries and plans may have had other places. */
function numberBefore({ model, values }: Snapshot, now: Model, plan: number, cell: number): Decimal {
  const row = now.cells[cell]?.row;
  const name = now.plans[plan]?.name;
  const id = model.cells[cell]?.row === row ? cell : model.cells.findIndex((one) => one.row === row);
  const p = model.plans[plan]?.name === name ? plan : model.plans.findIndex((one) => one.name === name);
  return values[p]?.numbers[id] ?? unknownNumber;
}

/** Brings a model to life. @param values of its plans, where they have been computed already */
export function createModelStore(initial: Model, first: Origin, values?: readonly Values[]): ModelStore {
  const computed = values && { model: initial, origin: first, values };
  const history = createHistory(computed ?? snapshotOf(initial, first));
  const { show: showModel, ...read } = createSignals(history.snapshot());
  const [signals, setSignals] = createSignal(new CellSignals(history.snapshot()));

  const show = (next: Snapshot, old: Snapshot): void => {
    if (next.origin === old.origin && signals().fits(next)) signals().show(next, old);
    else setSignals(new CellSignals(next));
    showModel(next);
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
    ...read,
    values: () => history.snapshot().values,
    shown: (plan, cell) => signals().read(plan, cell),
    valuesBefore: () => {
      const { model, values } = history.before();
      return model.cells === history.snapshot().model.cells ? values : undefined;
    },
    before: (plan, cell) => numberBefore(history.before(), history.snapshot().model, plan, cell),
    edit: (change) => put(edited(history.snapshot().model, change)),
    enter: (change) => put(edited(history.snapshot().model, ownFigure(change, history.snapshot().model.sheet))),
    replace: (sheet) => {
      const { model } = untrack(history.snapshot);
      if (sheet === model.sheet) return;
      history.finish();
      put(rebuilt(model, sheet));
      history.finish();
    },
    put,
    finish: () => history.finish(),
    undo: () => step(true),
    redo: () => step(false),
    canUndo: history.canUndo,
    canRedo: history.canRedo,
    quietly: history.quietly,
    trail: () => untrack(history.trail),
    bringBack: (from, kept) => untrack(() => history.bringBack(from, kept)),
    open: (snapshot) =>
      move(() => {
        history.finish();
        history.begin();
        history.finish();
        history.set(snapshot);
      }),
  };
}
