import { batch, createEffect, createSignal, on, type Accessor } from 'solid-js';
import type { ModelStore } from './modelStore';
import { createWayBack, type WayBack } from './wayBack';

/** What of the numbers is in sight, and how to get to a row. */
export interface EntryNavigation {
  readonly words: Accessor<string>;
  setWords(words: string): void;
  readonly onlyInputs: Accessor<boolean>;
  setOnlyInputs(on: boolean): void;
  isOpen(group: string): boolean;
  setOpen(group: string, open: boolean): void;
  /** Whether a row shows where it comes from. */
  isAsked(row: number): boolean;
  setAsked(row: number, asked: boolean): void;
  /** A row that must be on the page even if far out of sight. */
  readonly wanted: Accessor<number | undefined>;
  /** Opens what hides a row, scrolls to it and focuses it; `ask` also opens where it comes from. */
  goToRow(row: number, ask?: boolean): void;
  readonly goTo: (cell: number) => void;
  readonly wayBack: WayBack;
}

export function rowId(row: number): string {
  return `row-${row}`;
}

/** Scrolls to a row that is on the page and focuses what can be done there. */
function focusRow(row: number): void {
  const element = document.getElementById(rowId(row));
  const target = element?.querySelector<HTMLElement>('.number-field') ?? element?.querySelector<HTMLElement>('button');
  element?.scrollIntoView({ block: 'center' });
  target?.focus({ preventScroll: true });
}

/** @param show brings the numbers to the front where only one question fits on the screen */
export function createEntryNavigation(
  store: ModelStore,
  show: () => void,
  groupOf: (row: number) => string,
): EntryNavigation {
  const [words, setWords] = createSignal('');
  const [onlyInputs, setOnlyInputs] = createSignal(false);
  const [closed, setClosed] = createSignal<ReadonlySet<string>>(new Set());
  const [asked, setAsked] = createSignal<ReadonlySet<number>>(new Set());
  const [wanted, setWanted] = createSignal<number>();

  const wayBack = createWayBack();
  createEffect(on(store.version, wayBack.forget, { defer: true }));

  const change = <T>(set: ReadonlySet<T>, value: T, has: boolean): ReadonlySet<T> => {
    const changed = new Set(set);
    if (has) changed.add(value);
    else changed.delete(value);
    return changed;
  };
  const setOpen = (group: string, open: boolean): void => {
    setClosed((groups) => change(groups, group, !open));
  };
  const ask = (row: number, isAsked: boolean): void => {
    setAsked((rows) => change(rows, row, isAsked));
  };
  const goToRow = (row: number, askThere = false): void => {
    wayBack.leave();
    batch(() => {
      show();
      setWords('');
      setOnlyInputs(false);
      setOpen(groupOf(row), true);
      setWanted(row);
      if (askThere) ask(row, true);
    });
    // Once the row has its place; what was hidden until now has none before the next frame.
    requestAnimationFrame(() => focusRow(row));
  };
  return {
    words,
    setWords,
    onlyInputs,
    setOnlyInputs,
    isOpen: (group) => !closed().has(group),
    setOpen,
    isAsked: (row) => asked().has(row),
    setAsked: ask,
    wanted,
    goToRow,
    goTo: (cell) => {
      const row = store.model().cells[cell]?.row;
      if (row !== undefined) goToRow(row);
    },
    wayBack,
  };
}
