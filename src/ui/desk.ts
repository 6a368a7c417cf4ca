import { createSignal, type Accessor } from 'solid-js';
import { problem, type Problem } from '../core/problem';
import { reasonText } from './autosave';
import type { Drafts } from './drafts';
import type { Live } from './live';
import { momentOf, type Moment } from './moment';
import { openFile, openShipped } from './opening';
import { download, fileText } from './saving';
import { shippedModels, type ShippedModel } from './shippedModels';

/** What a person is told about the last thing done with a file. */
export interface Message {
  readonly text: string;
  /** Whether undo takes back what it tells of. */
  readonly undoable: Accessor<boolean>;
}

/** A file that could not be opened. */
export interface Refusal {
  readonly name: string;
  readonly problem: Problem;
}

/** Opening, saving and starting over, with what is said of it. */
export interface Desk {
  readonly message: Accessor<Message | undefined>;
  readonly refusal: Accessor<Refusal | undefined>;
  /** The file being read and the share read so far, 0 to 1. */
  readonly reading: Accessor<{ readonly name: string; readonly share: number } | undefined>;
  open(file: File): Promise<void>;
  readonly openShipped: (model: ShippedModel) => void;
  readonly save: () => void;
  /** Undefined for a model that did not come with the program. */
  readonly startOver: Accessor<(() => void) | undefined>;
  stop(): void;
  dismiss(): void;
}

/** Saves the file and says so. */
function saved(live: Live, drafts: Drafts): string {
  const { name } = live.origin();
  download(name, fileText(live));
  const left = drafts.all().length;
  const texts = left === 1 ? 'one text that is not valid yet stays' : `${left} texts that are not valid yet stay`;
  return left === 0 ? `Saved as ${name}.` : `Saved as ${name}; ${texts} out of it.`;
}

function unreadable(reason: unknown): Problem {
  const text = reasonText(reason);
  return problem('unreadable', `file cannot be read: ${text}. Try once more.`, { text });
}

interface News {
  readonly message: Accessor<Message | undefined>;
  readonly refusal: Accessor<Refusal | undefined>;
  say(text: string, undoable: Accessor<boolean>): void;
  refuse(name: string, problem: Problem): void;
  dismiss(): void;
}

function createNews(): News {
  const [message, setMessage] = createSignal<Message>();
  const [refusal, setRefusal] = createSignal<Refusal>();
  const set = (told: Message | undefined, refused: Refusal | undefined): void => {
    setMessage(told);
    setRefusal(refused);
  };
  return {
    message,
    refusal,
    say: (text, undoable) => set({ text, undoable }, undefined),
    refuse: (name, problem) => set(undefined, { name, problem }),
    dismiss: () => set(undefined, undefined),
  };
}

export function createDesk(live: Live, drafts: Drafts): Desk {
  const news = createNews();
  const [reading, setReading] = createSignal<{ name: string; share: number }>();
  let stopping = new AbortController();

  const put = (moment: Moment, text: string): void => {
    live.open(moment);
    const since = live.version();
    // Once something else was done, undo would take that back.
    news.say(text, () => live.version() === since);
  };
  const putShipped = async (shipped: ShippedModel, text: string): Promise<void> => {
    try {
      const { model, origin } = await openShipped(shipped);
      put(momentOf(model, origin), text);
    } catch (reason) {
      news.refuse(shipped.key, unreadable(reason));
    }
  };
  const open = async (file: File): Promise<void> => {
    stopping.abort();
    stopping = new AbortController();
    const { signal } = stopping;
    setReading({ name: file.name, share: 0 });
    try {
      const opened = await openFile(file, (share) => setReading({ name: file.name, share }), signal);
      if (signal.aborted) return;
      if ('refusal' in opened) news.refuse(opened.name, opened.refusal);
      else put(opened, `${file.name} is open.`);
    } catch (reason) {
      if (!signal.aborted) news.refuse(file.name, unreadable(reason));
    } finally {
      if (!signal.aborted) setReading(undefined);
    }
  };
  const startOver = (): (() => void) | undefined => {
    const shipped = shippedModels.find(({ key }) => key === live.origin().shipped);
    return shipped && (() => void putShipped(shipped, 'Started over with the model’s own numbers.'));
  };
  return {
    ...news,
    reading,
    open,
    openShipped: (shipped) => void putShipped(shipped, `${shipped.question} is open.`),
    save: () => news.say(saved(live, drafts), () => false),
    startOver,
    stop: () => {
      stopping.abort();
      setReading(undefined);
    },
  };
}
