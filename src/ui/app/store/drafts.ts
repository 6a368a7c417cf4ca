import { createMemo, createSignal } from 'solid-js';
import type { ModelStore } from './modelStore';

/** A field of the model's sheet. */
export interface FieldKey {
  readonly row: number;
  readonly column: string;
}

/** Drafts: texts that could not be accepted, by the field in which they were typed, so that nothing typed is lost. */
export interface Drafts {
  get(key: FieldKey): string | undefined;
  /** Sets a draft; undefined removes it. */
  set(key: FieldKey, text: string | undefined): void;
  /** All drafts of the model now open, as they are kept. */
  all(): readonly (readonly [row: number, column: string, text: string])[];
}

type Texts = ReadonlyMap<string, readonly [row: number, column: string, text: string]>;

const none: Texts = new Map();

function keyOf({ row, column }: FieldKey): string {
  return `${row} ${column}`;
}

/** Drafts belong to the model in which they were typed; when undo returns to that model they are there again. */
export function createDrafts(store: ModelStore): Drafts {
  const [byOrigin, setByOrigin] = createSignal<ReadonlyMap<object, Texts>>(new Map(), { equals: false });
  const texts = createMemo((): Texts => byOrigin().get(store.origin()) ?? none);
  return {
    get: (key) => texts().get(keyOf(key))?.[2],
    set: (key, text) => {
      if (texts().get(keyOf(key))?.[2] === text) return;
      const changed = new Map(texts());
      if (text === undefined) changed.delete(keyOf(key));
      else changed.set(keyOf(key), [key.row, key.column, text]);
      setByOrigin((before) => new Map(before).set(store.origin(), changed));
    },
    all: () => [...texts().values()],
  };
}
