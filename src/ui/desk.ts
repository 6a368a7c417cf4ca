import { createSignal, type Accessor } from 'solid-js';
import { problem, type Problem } from '../core/problem';
import type { SharedFile } from '../files/share';
import { reasonText } from './autosave';
import type { Drafts } from './drafts';
import type { Live } from './live';
import { momentOf, type Moment } from './moment';
import { createNews, type News, type Told } from './news';
import { openFile, openShipped } from './opening';
import { download, fileText } from './saving';
import { changesOf } from './session';
import { handOver, linkTo } from './sharedLink';
import { shippedModels, type ShippedModel } from './shippedModels';

/** Opening, saving and starting over, with what is said of it. */
export interface Desk extends Told {
  /** The file being read and the share read so far, 0 to 1. */
  readonly reading: Accessor<{ readonly name: string; readonly share: number } | undefined>;
  open(file: File): Promise<void>;
  readonly openShipped: (model: ShippedModel) => void;
  readonly save: () => void;
  /** Copies a link that holds the model. */
  readonly copyLink: () => void;
  /** Opens what a link holds; asks first where that would take the place of changed numbers. */
  readonly openLink: (found: SharedFile | { readonly problem: Problem }) => void;
  /** Puts the model back as it came: a shipped one as it is shipped today, any other as it was opened. */
  readonly startOver: () => void;
  stop(): void;
}

/** Texts that no file can hold yet, as the end of a sentence. */
function leftOut(drafts: Drafts): string {
  const left = drafts.all().length;
  if (left === 0) return '.';
  return left === 1
    ? '; one text that is not valid yet stays out of it.'
    : `; ${left} texts that are not valid yet stay out of it.`;
}

/** Saves the file and says so. */
function saved(live: Live, drafts: Drafts): string {
  const { name } = live.origin();
  download(name, fileText(live));
  return `Saved as ${name}${leftOut(drafts)}`;
}

/** Copies a link that holds the file and says where it is, or why there is none. */
async function linked(live: Live, drafts: Drafts): Promise<string> {
  const link = await linkTo({ name: live.origin().name, bytes: new TextEncoder().encode(fileText(live)) });
  if (typeof link !== 'string') return `No link was made: ${link.problem.message}`;
  const where =
    (await handOver(link)) === 'clipboard'
      ? 'A link is copied'
      : 'The link stands in this page’s address: copy it there';
  return `${where}. It holds the whole model as it is now${leftOut(drafts)} Give it to those who may see your numbers.`;
}

function unreadable(reason: unknown): Problem {
  const text = reasonText(reason);
  return problem('unreadable', `file cannot be read: ${text}. Try once more.`, { text });
}

/** Copying and opening links. */
function byLink(
  live: Live,
  drafts: Drafts,
  news: News,
  open: (file: File) => Promise<void>,
): Pick<Desk, 'copyLink' | 'openLink'> {
  const put = ({ bytes, name }: SharedFile): void => {
    news.dismiss();
    void open(new File([bytes], name));
  };
  return {
    copyLink: () => void linked(live, drafts).then((text) => news.say(text, () => false)),
    openLink: (found) => {
      const { name, file } = live.origin();
      const changed = changesOf(file.sheet, live.model().sheet).length + drafts.all().length > 0;
      if ('problem' in found) news.refuse('The link', found.problem);
      else if (changed) news.ask({ name: found.name, instead: name, open: () => put(found) });
      else put(found);
    },
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
  const open = async (file: File, text = `${file.name} is open.`): Promise<void> => {
    stopping.abort();
    stopping = new AbortController();
    const { signal } = stopping;
    setReading({ name: file.name, share: 0 });
    try {
      const opened = await openFile(file, (share) => setReading({ name: file.name, share }), signal);
      if (signal.aborted) return;
      if ('refusal' in opened) news.refuse(opened.name, opened.refusal);
      else put(opened, text);
    } catch (reason) {
      if (!signal.aborted) news.refuse(file.name, unreadable(reason));
    } finally {
      if (!signal.aborted) setReading(undefined);
    }
  };
  const startOver = (): void => {
    const { name, shipped, bytes } = live.origin();
    const known = shippedModels.find(({ key }) => key === shipped);
    const text = 'Started over with the model’s own numbers.';
    void (known === undefined ? open(new File([bytes], name), text) : putShipped(known, text));
  };
  return {
    ...news,
    reading,
    open: (file) => open(file),
    openShipped: (shipped) => void putShipped(shipped, `${shipped.question} is open.`),
    save: () => news.say(saved(live, drafts), () => false),
    ...byLink(live, drafts, news, open),
    startOver,
    stop: () => {
      stopping.abort();
      setReading(undefined);
    },
  };
}
