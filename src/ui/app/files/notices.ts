import { createSignal, type Accessor } from 'solid-js';

/** A message about the last thing done with a file. */
interface Message {
  readonly text: string;
  /** Whether undo takes back what the message is about. */
  readonly undoable: Accessor<boolean>;
}

/** Files that could not be opened. */
interface Refusal {
  readonly heading: string;
  /** What is wrong, a sentence for each file. */
  readonly messages: readonly string[];
  /** What is open now. */
  readonly open: string;
}

/** A file that waits to be opened, as it would replace work that is saved nowhere. */
interface OpeningOffer {
  /** The question, which says what would replace what. */
  readonly text: string;
  open(): void;
}

/** The notice that is shown, one at a time, until it is dismissed. */
export interface CurrentNotice {
  readonly message: Accessor<Message | undefined>;
  readonly refusal: Accessor<Refusal | undefined>;
  readonly offer: Accessor<OpeningOffer | undefined>;
  dismiss(): void;
}

/** The notice that is shown, and ways to replace it. */
export interface Notices extends CurrentNotice {
  say(text: string, undoable: Accessor<boolean>): void;
  readonly refuse: (refused: Refusal) => void;
  ask(offer: OpeningOffer): void;
}

export function createNotices(): Notices {
  const [message, setMessage] = createSignal<Message>();
  const [refusal, setRefusal] = createSignal<Refusal>();
  const [offer, setOffer] = createSignal<OpeningOffer>();
  const set = (message?: Message, refused?: Refusal, offered?: OpeningOffer): void => {
    setMessage(message);
    setRefusal(refused);
    setOffer(offered);
  };
  return {
    message,
    refusal,
    offer,
    say: (text, undoable) => set({ text, undoable }),
    refuse: (refused) => set(undefined, refused),
    ask: (offered) => set(undefined, undefined, offered),
    dismiss: () => set(),
  };
}
