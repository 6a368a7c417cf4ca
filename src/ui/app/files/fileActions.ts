import { createSignal, type Accessor } from 'solid-js';
import { problem, type Problem } from '../../../core/problem';
import type { SharedFile } from '../../../files/share';
import { fileTexts } from '../../../present/page/fileTexts';
import { shippedModelTexts } from '../../../present/page/shippedModelTexts';
import type { Sheet } from '../../../model/sheet';
import { reasonText } from '../reasonText';
import type { Drafts } from '../store/drafts';
import type { ModelStore } from '../store/modelStore';
import { snapshotOf, type Snapshot } from '../store/snapshot';
import { createNotices, type Notices, type CurrentNotice } from './notices';
import { openFile, openShipped } from './opening';
import { download, fileText } from './saving';
import { changesOf, layoutOf } from '../shelf/changes';
import { handOver, linkTo } from './modelLink';
import { shippedModels, type ShippedModel } from './shippedModels';

/** Opening, saving, sharing and starting over, with the notices about them. */
export interface FileActions extends CurrentNotice {
  /** The file being read and the share read so far, 0 to 1. */
  readonly reading: Accessor<{ readonly name: string; readonly share: number } | undefined>;
  /** Asks first where the opened file would replace changes that are not kept. */
  readonly open: (file: File) => void;
  readonly openShipped: (model: ShippedModel) => void;
  readonly save: () => void;
  /** Copies a link that holds the model. */
  readonly copyLink: () => void;
  /** Opens the model of a link. */
  readonly openLink: (found: SharedFile | { readonly problem: Problem }) => void;
  /** Puts the model back as it was at first: a shipped one as shipped today, any other as it was opened. */
  readonly startOver: () => void;
  /** Shows a message about something that undo does not take back. */
  readonly say: (text: string) => void;
  stop(): void;
}

/** Saves the file and says so. */
function saved(store: ModelStore, drafts: Drafts): string {
  const { name } = store.origin();
  download(name, fileText(store));
  return fileTexts.saved(name, drafts.all().length);
}

/** Copies a link that holds the file. Returns the message about it, also where there can be no link. */
async function linked(store: ModelStore, drafts: Drafts): Promise<string> {
  const link = await linkTo({ name: store.origin().name, bytes: new TextEncoder().encode(fileText(store)) });
  if (typeof link !== 'string') return fileTexts.noLink(link.problem.message);
  const told = (await handOver(link)) === 'clipboard' ? fileTexts.linkCopied : fileTexts.linkInAddress;
  return told(drafts.all().length);
}

function unreadable(reason: unknown): Problem {
  const text = reasonText(reason);
  return problem('unreadable', fileTexts.unreadable(text), { text });
}

/** The question whether something may replace the open file, whose name is given. */
type Asking = (instead: string) => string;

/** Asks before something replaces changes that are neither kept nor saved. */
function createCare(store: ModelStore, drafts: Drafts, news: Notices, isKept: () => boolean) {
  let saved: Sheet | undefined;
  const isUnsaved = (): boolean => {
    const { sheet } = store.model();
    const from = store.origin().file.sheet;
    const isChanged = (): boolean => changesOf(from, sheet).length > 0 || layoutOf(from, sheet) !== undefined;
    return drafts.all().length > 0 || (sheet !== saved && isChanged());
  };
  return {
    noteSaved: (): void => {
      saved = store.model().sheet;
    },
    replace: (asking: Asking, open: () => void): void => {
      if (isUnsaved() && !isKept()) news.ask({ text: asking(store.origin().name), open });
      else open();
    },
  };
}

/** Takes an opened model. */
type Put = (opened: Snapshot) => void;

/** Reads files and shipped models; a notice says why one cannot be opened. */
function createOpening(news: Notices) {
  const [reading, setReading] = createSignal<{ name: string; share: number }>();
  let stopping = new AbortController();

  const shipped = async (model: ShippedModel, put: Put): Promise<void> => {
    try {
      const opened = await openShipped(model);
      put(snapshotOf(opened.model, opened.origin));
    } catch (reason) {
      news.refuse(fileTexts.notOpened(model.key), unreadable(reason));
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
      if ('refusal' in opened) news.refuse(fileTexts.notOpened(opened.name), opened.refusal);
      else put(opened);
    } catch (reason) {
      if (!signal.aborted) news.refuse(fileTexts.notOpened(given.name), unreadable(reason));
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

/** @param isKept whether the work is kept on this machine, in which case opening replaces nothing */
export function createFileActions(store: ModelStore, drafts: Drafts, isKept: () => boolean): FileActions {
  const news = createNotices();
  const care = createCare(store, drafts, news, isKept);
  const opening = createOpening(news);
  const put = (snapshot: Snapshot, text: string): void => {
    store.open(snapshot);
    const since = store.version();
    // After another edit, undo would take that one back.
    news.say(text, () => store.version() === since);
  };
  const putFile = (file: File, asking: Asking): Promise<void> =>
    opening.file(file, (snapshot) => care.replace(asking, () => put(snapshot, fileTexts.isOpen(file.name))));
  const startOver = (): void => {
    const { name, shipped, bytes } = store.origin();
    const known = shippedModels.find(({ key }) => key === shipped);
    const again: Put = (snapshot) => put(snapshot, fileTexts.startedOver);
    void (known === undefined ? opening.file(new File([bytes], name), again) : opening.shipped(known, again));
  };
  return {
    ...news,
    say: (text) => news.say(text, () => false),
    reading: opening.reading,
    open: (file) => void putFile(file, (instead) => fileTexts.fileReplaces(file.name, instead)),
    openShipped: (shipped) => {
      const { question } = shippedModelTexts[shipped.key];
      const asking: Asking = (instead) => fileTexts.modelReplaces(question, instead);
      const place: Put = (snapshot) => care.replace(asking, () => put(snapshot, fileTexts.isOpen(question)));
      void opening.shipped(shipped, place);
    },
    openLink: (found) => {
      if ('problem' in found) news.refuse(fileTexts.linkNotOpened, found.problem);
      else void putFile(new File([found.bytes], found.name), (instead) => fileTexts.linkReplaces(found.name, instead));
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
