import { createDelay } from '../delay';
import type { ShelfDatabase } from '../database';
import { isShelfFile, type ShelfFile, type ShelfVersion, type ShelfWork } from '../record';
import {
  copiedWork,
  copyFile,
  copyVersion,
  copyWork,
  hasFileCopy,
  removeCopies,
  type CopyStorage,
  type Place,
} from './copyStorage';

/** Makes the second copies. Where the browser allows none, nothing happens: the database has the models. */
export interface Copies {
  /** Work is in the database: it is copied soon, and at once with its file where that is new. */
  readonly written: (work: ShelfWork, file: ShelfFile | undefined) => void;
  readonly version: (made: ShelfVersion, first: number) => void;
  /** Resolves once a model that is about to be deleted has no copies. */
  readonly removed: (id: string) => Promise<void>;
}

/** Milliseconds that work waits at most for its copy, also while somebody types. */
const soon = 500;

/** What waits for its copy. */
interface Waiting {
  readonly work: ShelfWork;
  readonly file: ShelfFile | undefined;
}

/** Brings the file of a model to its copies, unless it is there; gives the place in which work is written next. */
async function begun(database: ShelfDatabase, storage: CopyStorage, id: string): Promise<Place> {
  if (!(await hasFileCopy(storage, id))) {
    const { file } = await database.read(id);
    if (isShelfFile(file)) await copyFile(storage, file);
  }
  const [a, b] = await Promise.all([copiedWork(storage, id, 'a'), copiedWork(storage, id, 'b')]);
  return a === undefined || (b !== undefined && a.at <= b.at) ? 'a' : 'b';
}

/** @param opened opens the storage of the copies */
export function createCopies(database: ShelfDatabase, opened: () => Promise<CopyStorage>): Copies {
  const waiting = new Map<string, Waiting>();
  const next = new Map<string, Place>();
  let before: Promise<void> = Promise.resolve();
  /** Does one thing after the other; what fails is left out. */
  const inTurn = (act: (storage: CopyStorage) => Promise<void>): Promise<void> =>
    (before = before.then(async () => act(await opened())).catch(() => undefined));
  const copy = async (storage: CopyStorage, { work, file }: Waiting): Promise<void> => {
    const { id } = work;
    // Another page may have deleted it meanwhile.
    if (!(await database.ids()).includes(id)) return;
    if (file !== undefined) await copyFile(storage, file);
    const place = next.get(id) ?? (await begun(database, storage, id));
    await copyWork(storage, work, place);
    next.set(id, place === 'a' ? 'b' : 'a');
  };
  const delay = createDelay(soon, () => {
    for (const one of waiting.values()) void inTurn((storage) => copy(storage, one));
    waiting.clear();
  });
  addEventListener('pagehide', delay.hurry);
  return {
    written: (work, file) => {
      waiting.set(work.id, { work, file });
      delay.ask();
      if (file !== undefined) delay.hurry();
    },
    version: (made, first) => {
      void inTurn((storage) => copyVersion(storage, made, first));
    },
    removed: (id) => {
      waiting.delete(id);
      next.delete(id);
      return inTurn((storage) => removeCopies(storage, id));
    },
  };
}
