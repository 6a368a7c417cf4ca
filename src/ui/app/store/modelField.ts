import { createEffect, createMemo, createSignal, on, untrack, type Accessor } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { Drafts, FieldKey } from './drafts';
import type { ModelStore } from './modelStore';

/** What a field edits and how its text is understood. */
export interface FieldOptions {
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly key: Accessor<FieldKey>;
  /** The text in the sheet that stands now. */
  readonly committed: Accessor<string>;
  /** How that text is shown. */
  readonly show: (text: string) => string;
  /** The sheet's text that typed text stands for, or what is wrong with it. */
  readonly read: (typed: string) => { readonly text: string } | Problem;
  /** Puts an understood text into the model; anything but `live.edit` is given where that would do work twice. */
  readonly commit: (text: string) => void;
}

/** A text field whose valid texts are live in the model and whose invalid ones are kept as drafts. */
export interface Field {
  readonly text: Accessor<string>;
  readonly problem: Accessor<Problem | undefined>;
  onInput(event: { currentTarget: { value: string } }): void;
  onFocus(): void;
  onBlur(): void;
  onKeyDown(event: KeyboardEvent): void;
}

export function createField({ store, drafts, key, committed, show, read, commit }: FieldOptions): Field {
  const [typed, setTyped] = createSignal<string>();
  let atStart: string | undefined;

  const standsFor = (text: string): boolean => {
    const understood = read(text);
    return 'text' in understood && understood.text === committed();
  };
  // Undo, a plan's reset or the range mark may change the value under what was typed.
  createEffect(
    on(
      committed,
      () => {
        const text = untrack(typed);
        if (text !== undefined && untrack(() => drafts.get(key())) === undefined && !standsFor(text))
          setTyped(undefined);
      },
      { defer: true },
    ),
  );

  const settle = (): void => {
    store.finish();
    atStart = committed();
    if (drafts.get(key()) === undefined) setTyped(undefined);
  };
  const restore = (): void => {
    drafts.set(key(), undefined);
    setTyped(undefined);
    if (atStart !== undefined && committed() !== atStart) store.undo();
    store.finish();
  };
  const draft = createMemo(() => drafts.get(key()));

  const problem = createMemo(() => {
    const text = draft();
    const understood = text === undefined ? undefined : untrack(() => read(text));
    return understood !== undefined && 'code' in understood ? understood : undefined;
  });

  return {
    text: () => typed() ?? draft() ?? show(committed()),
    problem,
    onInput: ({ currentTarget: { value } }) => {
      setTyped(value);
      const understood = read(value);
      drafts.set(key(), 'code' in understood ? value : undefined);
      if ('text' in understood && understood.text !== committed()) commit(understood.text);
    },
    onFocus: () => {
      atStart = committed();
    },
    onBlur: settle,
    onKeyDown: (event) => {
      if (event.key === 'Enter') settle();
      else if (event.key === 'Escape') restore();
      else return;
      event.preventDefault();
    },
  };
}
