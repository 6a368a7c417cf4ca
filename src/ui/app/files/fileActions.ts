import { createSignal, type Accessor } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { SharedFile } from '../../../files/sharedFile';
import { fileTexts } from '../../../present/page/fileTexts';
import { shippedModelTexts } from '../../../present/page/shippedModelTexts';
import type { Sheet } from '../../../model/sheet';
import { reasonText } from '../reasonText';
import type { Drafts } from '../store/drafts';
import type { ModelStore } from '../store/modelStore';
import type { Snapshot } from '../store/snapshot';
import { createNotices, type Notices, type CurrentNotice } from './notices';
import { openFile, openShipped, type Opened } from './opening';
import { changesOf, layoutOf } from '../shelf/changes';
import type { ShelfDatabase } from '../shelf/database';
import type { Imported } from '../shelf/importFiles';
import { shippedModels, type ShippedModel } from './shippedModels';

/** Opening, saving, sharing and starting over, with the notices about them. */
export interface FileActions extends CurrentNotice {
  /** The file being read and the share read so far, 0 to 1. */
  readonly reading: Accessor<{ readonly name: string; readonly share: number } | undefined>;
  /**
   * Opens a file; of several each gets its place on the shelf and the last is open then. Asks first where the opened
   * file would replace changes that are not kept.
   */
  readonly open: (files: readonly File[]) => void;
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

function refuseOne(news: Notices, heading: string, message: string): void {
  news.refuse({ heading, messages: [message], open: fileTexts.othersUntouched });
}

/** Says that a file cannot be read. */
function refuseUnread(news: Notices, name: string, reason: unknown): void {
  refuseOne(news, fileTexts.notOpened(name), fileTexts.unreadable(reasonText(reason)));
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
function createOpening(news: Notices, database: ShelfDatabase) {
  const [reading, setReading] = createSignal<{ name: string; share: number }>();
  let stopping = new AbortController();

  const shipped = async (model: ShippedModel, put: Put): Promise<void> => {
    try {
      put(await openShipped(model));
    } catch (reason) {
      refuseUnread(news, model.key, reason);
    }
  };
  /** Reads files in place of what is being read, and passes on what came of it. */
  const reads = async <T>(
    name: string,
    work: (read: (file: File) => Promise<Opened>) => Promise<T>,
    put: (found: T) => void,
  ): Promise<void> => {
    stopping.abort();
    stopping = new AbortController();
    const { signal } = stopping;
    const read = (file: File): Promise<Opened> => {
      setReading({ name: file.name, share: 0 });
      return openFile(file, (share) => setReading({ name: file.name, share }), signal);
    };
    try {
      const found = await work(read);
      if (!signal.aborted) put(found);
    } catch (reason) {
      if (!signal.aborted) refuseUnread(news, name, reason);
    } finally {
      if (!signal.aborted) setReading(undefined);
    }
  };
  const file = (given: File, put: Put): Promise<void> =>
    reads(
      given.name,
      (read) => read(given),
      (opened) => {
        if ('refusal' in opened) refuseOne(news, fileTexts.notOpened(opened.name), opened.refusal.message);
        else put(opened);
      },
    );
  const several = (given: readonly File[], put: (found: Imported) => void): Promise<void> =>
    reads(
      given[0]?.name ?? '',
      async (read) => (await import('../shelf/importFiles')).importFiles(database, given, read),
      put,
    );
  const stop = (): void => {
    stopping.abort();
    setReading(undefined);
  };
  return { reading, shipped, file, several, stop };
}

/** The shelf, as far as files have to do with it. */
interface Shelf {
  readonly database: ShelfDatabase;
  /** Whether the work is kept on this machine, in which case opening replaces nothing. */
  readonly isKept: () => boolean;
  /** Called when the model was saved as a file. */
  readonly onSaved: () => void;
}

/** What was done to copy a link, by a part that few visits need. */
async function linkCopied(store: ModelStore, drafts: Drafts): Promise<string> {
  return (await import('./copyLink')).copyLink(store, drafts);
}

export function createFileActions(store: ModelStore, drafts: Drafts, shelf: Shelf): FileActions {
  const news = createNotices();
  const care = createCare(store, drafts, news, shelf.isKept);
  const opening = createOpening(news, shelf.database);
  const put = (snapshot: Snapshot, text: string): void => {
    store.open(snapshot);
    const since = store.version();
    // After another edit, undo would take that one back.
    news.say(text, () => store.version() === since);
  };
  const putFile = (file: File, asking: Asking): Promise<void> =>
    opening.file(file, (snapshot) => care.replace(asking, () => put(snapshot, fileTexts.isOpen(file.name))));
  const putSeveral =
    (of: number) =>
    ({ last, others, refused }: Imported): void => {
      const messages = refused;
      if (last === undefined) {
        return news.refuse({ heading: fileTexts.noneOpened, messages, open: fileTexts.othersUntouched });
      }
      const open = fileTexts.severalOpen(last.origin.name, others);
      const asking: Asking = (instead) => fileTexts.fileReplaces(last.origin.name, instead);
      care.replace(asking, () => put(last, open));
      if (refused.length > 0) news.refuse({ heading: fileTexts.someNotOpened(refused.length, of), messages, open });
    };
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
    open: ([file, ...more]) => {
      if (file === undefined) return;
      if (more.length > 0) void opening.several([file, ...more], putSeveral(more.length + 1));
      else void putFile(file, (instead) => fileTexts.fileReplaces(file.name, instead));
    },
    openShipped: (shipped) => {
      const { question } = shippedModelTexts[shipped.key];
      const asking: Asking = (instead) => fileTexts.modelReplaces(question, instead);
      const place: Put = (snapshot) => care.replace(asking, () => put(snapshot, fileTexts.isOpen(question)));
      void opening.shipped(shipped, place);
    },
    openLink: (found) => {
      if ('problem' in found) refuseOne(news, fileTexts.linkNotOpened, found.problem.message);
      else void putFile(new File([found.bytes], found.name), (instead) => fileTexts.linkReplaces(found.name, instead));
    },
    save: () =>
      void import('./saveModel').then(({ saveModel }) => {
        news.say(saveModel(store, drafts), () => false);
        care.noteSaved();
        shelf.onSaved();
      }),
    copyLink: () => void linkCopied(store, drafts).then((text) => news.say(text, () => false)),
    startOver,
    stop: opening.stop,
  };
}
