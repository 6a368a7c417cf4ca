import { createEffect, createMemo, createSignal, on, untrack, type Accessor } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { Drafts, FieldKey } from './drafts';
import type { ModelStore } from './modelStore';

/** What a field edits, and how its text is read and shown. */
export interface FieldOptions {
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly key: Accessor<FieldKey>;
  /** The text that the sheet has now. */
  readonly committed: Accessor<string>;
  /** How that text is shown. */
  readonly show: (text: string) => string;
  /** Reads typed text: the text for the sheet, or what is wrong. */
  readonly read: (typed: string) => { readonly text: string } | Problem;
  /** Puts an accepted text into the model: usually `store.edit`, or `store.put` where the edit is computed already. */
  readonly commit: (text: string) => void;
}

/** A text field of the model. Valid text goes into the model with every keystroke; invalid text is kept as a draft. */
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
  // Undo, a reset or the range mark may change the value while typed text is shown.
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
