import { createSignal, type Accessor } from 'solid-js';
import type { Phrase } from '../../../present/text/phrase';
import { rowId } from './entryNavigation';
import type { ModelStore } from './modelStore';

/** What is said of the last change of an entry, a formula or the whole model, until anything else is changed. */
export interface ChangeSaid {
  readonly sentence: Accessor<Phrase | undefined>;
  /** Says what has just been done. @param row the entry to go back to when it is taken back */
  readonly say: (sentence: Phrase, row?: number) => void;
  readonly takeBack: () => void;
  readonly close: () => void;
}

interface Said {
  readonly sentence: Phrase;
  readonly row: number | undefined;
  readonly version: number;
}

function focusLabel(row: number | undefined): void {
  const entry = row === undefined ? null : document.getElementById(rowId(row));
  const target = entry?.querySelector<HTMLElement>('.ask') ?? document.getElementById('numbers-heading');
  target?.focus();
}

export function createChangeSaid(store: ModelStore): ChangeSaid {
  const [said, setSaid] = createSignal<Said>();
  const standing = (): Said | undefined => (said()?.version === store.version() ? said() : undefined);
  return {
    sentence: () => standing()?.sentence,
    say: (sentence, row) => {
      setSaid({ sentence, row, version: store.version() });
    },
    takeBack: () => {
      const row = standing()?.row;
      store.undo();
      requestAnimationFrame(() => focusLabel(row));
    },
    close: () => {
      setSaid(undefined);
    },
  };
}
