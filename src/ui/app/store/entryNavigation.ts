import { batch, createSignal, type Accessor } from 'solid-js';
import type { ModelStore } from './modelStore';

/** A link to an entry that somebody followed. */
export interface Jump {
  readonly row: number;
  /** What had the focus, and how far the page was scrolled, in pixels. */
  readonly focused: Element | null;
  readonly scroll: number;
}

/** Which entries are shown and unfolded, and ways to jump to a row. */
export interface EntryNavigation {
  readonly words: Accessor<string>;
  setWords(words: string): void;
  readonly onlyInputs: Accessor<boolean>;
  setOnlyInputs(on: boolean): void;
  isOpen(group: string): boolean;
  setOpen(group: string, open: boolean): void;
  /** Whether the details below a row are open. */
  isAsked(row: number): boolean;
  setAsked(row: number, asked: boolean): void;
  /** A row that must be put on the page even if it is far out of sight. */
  readonly wanted: Accessor<number | undefined>;
  /** Unfolds what hides a row, scrolls to it and focuses it; `ask` also opens its details. */
  goToRow(row: number, ask?: boolean): void;
  readonly goTo: (cell: number) => void;
  /** The last link that was followed; the browser's Back leads to where it stood. */
  readonly jumped: Accessor<Jump | undefined>;
}

export function rowId(row: number): string {
  return `row-${row}`;
}

/** Scrolls to a row that is on the page and focuses its first field or button. */
function focusRow(row: number): void {
  const element = document.getElementById(rowId(row));
  const target = element?.querySelector<HTMLElement>('.number-field') ?? element?.querySelector<HTMLElement>('button');
  element?.scrollIntoView({ block: 'center' });
  target?.focus({ preventScroll: true });
}

/** @param show brings the numbers to the front where only one screen fits */
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

  const [jumped, setJumped] = createSignal<Jump>();

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
    const [focused, scroll] = [document.activeElement, scrollY];
    batch(() => {
      setJumped({ row, focused, scroll });
      show();
      setWords('');
      setOnlyInputs(false);
      setOpen(groupOf(row), true);
      setWanted(row);
      if (askThere) ask(row, true);
    });
    // A row that was hidden until now is not laid out before the next frame.
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
    jumped,
  };
}
