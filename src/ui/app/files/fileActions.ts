import { createSignal, type Accessor } from 'solid-js';
import { problem, type Problem } from '../../../core/problem';
import type { SharedFile } from '../../../files/share';
import type { Sheet } from '../../../model/sheet';
import { reasonText } from '../storage/autosave';
import type { Drafts } from '../store/drafts';
import type { ModelStore } from '../store/modelStore';
import { snapshotOf, type Snapshot } from '../store/snapshot';
import { createNotices, type Notices, type CurrentNotice } from './notices';
import { openFile, openShipped } from './opening';
import { download, fileText } from './saving';
import { changesOf } from '../storage/session';
import { handOver, linkTo } from './modelLink';
import { shippedModels, type ShippedModel } from './shippedModels';

/** Opening, saving and starting over, with what is said of it. */
export interface FileActions extends CurrentNotice {
  /** The file being read and the share read so far, 0 to 1. */
  readonly reading: Accessor<{ readonly name: string; readonly share: number } | undefined>;
  /** Opening asks first where it would take the place of numbers that were changed and not saved. */
  readonly open: (file: File) => void;
  readonly openShipped: (model: ShippedModel) => void;
  readonly save: () => void;
  /** Copies a link that holds the model. */
  readonly copyLink: () => void;
  /** Opens what a link holds. */
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
function saved(store: ModelStore, drafts: Drafts): string {
  const { name } = store.origin();
  download(name, fileText(store));
  return `Saved as ${name}${leftOut(drafts)}`;
}

/** Copies a link that holds the file and says where it is, or why there is none. */
async function linked(store: ModelStore, drafts: Drafts): Promise<string> {
  const link = await linkTo({ name: store.origin().name, bytes: new TextEncoder().encode(fileText(store)) });
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

/** Asks before something takes the place of numbers that were changed and are saved nowhere. */
function createCare(store: ModelStore, drafts: Drafts, news: Notices) {
  let saved: Sheet | undefined;
  const isUnsaved = (): boolean => {
    const { sheet } = store.model();
    return drafts.all().length > 0 || (sheet !== saved && changesOf(store.origin().file.sheet, sheet).length > 0);
  };
  return {
    noteSaved: (): void => {
      saved = store.model().sheet;
    },
    replace: (what: string, open: () => void): void => {
      if (isUnsaved()) news.ask({ what, instead: store.origin().name, open });
      else open();
    },
  };
}

/** What is done with what has been opened. */
type Put = (opened: Snapshot) => void;

/** Reads files and shipped models, and says why one cannot be opened. */
function createOpening(news: Notices) {
  const [reading, setReading] = createSignal<{ name: string; share: number }>();
  let stopping = new AbortController();

  const shipped = async (model: ShippedModel, put: Put): Promise<void> => {
    try {
      const opened = await openShipped(model);
      put(snapshotOf(opened.model, opened.origin));
    } catch (reason) {
      news.refuse(model.key, unreadable(reason));
    }
  };
  const file = async (given: File, put: Put): Promise<void> => {
    stopping.abort();
    stopping = new AbortController();
    const { signal } = stopping;
    setReading({ name: given.name, share: 0 });
    try {
      const opened = await openFile(given, (share) => setReading({ name: given.name, share }), signal);
      if (signal.aborted) return;
      if ('refusal' in opened) news.refuse(opened.name, opened.refusal);
      else put(opened);
    } catch (reason) {
      if (!signal.aborted) news.refuse(given.name, unreadable(reason));
    } finally {
      if (!signal.aborted) setReading(undefined);
    }
  };
  const stop = (): void => {
    stopping.abort();
    setReading(undefined);
  };
  return { reading, shipped, file, stop };
}

export function createFileActions(store: ModelStore, drafts: Drafts): FileActions {
  const news = createNotices();
  const care = createCare(store, drafts, news);
  const opening = createOpening(news);
  const put = (snapshot: Snapshot, text: string): void => {
    store.open(snapshot);
    const since = store.version();
    // Once something else was done, undo would take that back.
    news.say(text, () => store.version() === since);
  };
  const putFile = (file: File, what: string): Promise<void> =>
    opening.file(file, (snapshot) => care.replace(what, () => put(snapshot, `${file.name} is open.`)));
  const startOver = (): void => {
    const { name, shipped, bytes } = store.origin();
    const known = shippedModels.find(({ key }) => key === shipped);
    const again: Put = (snapshot) => put(snapshot, 'Started over with the model’s own numbers.');
    void (known === undefined ? opening.file(new File([bytes], name), again) : opening.shipped(known, again));
  };
  return {
    ...news,
    reading: opening.reading,
    open: (file) => void putFile(file, file.name),
    openShipped: (shipped) => {
      const { question } = shipped;
      const place: Put = (snapshot) => care.replace(`“${question}”`, () => put(snapshot, `${question} is open.`));
      void opening.shipped(shipped, place);
    },
    openLink: (found) => {
      if ('problem' in found) news.refuse('The link', found.problem);
      else void putFile(new File([found.bytes], found.name), `${found.name}, which the link holds,`);
    },
    save: () => {
      news.say(saved(store, drafts), () => false);
      care.noteSaved();
    },
    copyLink: () => void linked(store, drafts).then((text) => news.say(text, () => false)),
    startOver,
    stop: opening.stop,
  };
}
