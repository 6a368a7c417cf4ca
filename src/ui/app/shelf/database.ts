import { openDB, type DBSchema, type IDBPDatabase, type IDBPObjectStore, type StoreNames } from 'idb';
import { shelfTexts } from '../../../present/page/shelfTexts';
import type { ShelfFile, ShelfVersion, ShelfWork, WholeModel } from './record';
import type { StepsWriting } from './steps/stepRecord';

/** The browser's storage of models, each under its id. Every method rejects where the browser refuses storage. */
export interface ShelfDatabase {
  /** All work by id, also work that this version cannot read. */
  list(): Promise<Map<string, unknown>>;
  /** The ids of all work. */
  ids(): Promise<string[]>;
  read(id: string): Promise<{ readonly file: unknown; readonly work: unknown }>;
  /**
   * Writes work, its file unless that is stored already, and the steps of undo that lead to it: all or nothing.
   * Resolves once they are on the disk, to whether the file is there: another page may have deleted it.
   */
  write(work: ShelfWork, file: ShelfFile | undefined, steps?: StepsWriting): Promise<boolean>;
  /** Stores a value under an id, unless that id is taken. */
  setAside(id: string, value: unknown): Promise<void>;
  /** Stores models of which the database has none under their ids: all or nothing. */
  putBack(models: readonly WholeModel[]): Promise<void>;
  /** Removes a model with its file, its versions and its steps. */
  remove(id: string): Promise<void>;
  /** The versions of a model, the newest first, at most as many as asked for; also those that cannot be read. */
  readonly versions: (id: string, most?: number) => Promise<unknown[]>;
  /** Adds a version of a model and removes its versions before the number `first`. */
  readonly addVersion: (version: ShelfVersion, first: number) => Promise<void>;
  /** The kept steps of a model, in their order; also those that cannot be read. */
  readonly steps: (id: string) => Promise<unknown[]>;
}

interface Schema extends DBSchema {
  files: { key: string; value: unknown };
  works: { key: string; value: unknown };
  versions: { key: [id: string, number: number]; value: unknown };
  steps: { key: [id: string, number: number]; value: unknown };
}

const version = 3;

/** Keys of all versions, or steps, of a model from a number up to a number. */
const keysOf = (id: string, last = Infinity, first = -Infinity): IDBKeyRange =>
  IDBKeyRange.bound([id, first], [id, last]);

async function opened(name: string, onClosed: () => void): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(name, version, {
    upgrade: (database, from) => {
      if (from < 1) {
        database.createObjectStore('files');
        database.createObjectStore('works');
      }
      if (from < 2) database.createObjectStore('versions');
      database.createObjectStore('steps');
    },
    // A tab with a newer version wants to change the database and must not wait for this one.
    blocking: (_current, _blocked, event) => {
      (event.target as IDBDatabase).close();
      onClosed();
    },
    terminated: onClosed,
  });
}

function versionsIn(database: () => Promise<IDBPDatabase<Schema>>): Pick<ShelfDatabase, 'versions' | 'addVersion'> {
  return {
    versions: async (id, most = Infinity) => {
      const found: unknown[] = [];
      const { store } = (await database()).transaction('versions');
      let at = await store.openCursor(keysOf(id), 'prev');
      for (; at !== null && found.length < most; at = await at.continue()) found.push(at.value);
      return found;
    },
    addVersion: async (made, first) => {
      const transaction = (await database()).transaction('versions', 'readwrite');
      const deeds = [
        transaction.store.put(made, [made.id, made.number]),
        transaction.store.delete(keysOf(made.id, first - 1)),
      ];
      transaction.commit();
      await Promise.all([...deeds, transaction.done]);
    },
  };
}

type StepStore = IDBPObjectStore<Schema, ArrayLike<StoreNames<Schema>>, 'steps', 'readwrite'>;

/** Puts steps and lets all go that do not stay. */
function stepDeeds(store: StepStore, id: string, { put, stay: [first, last] }: StepsWriting): Promise<unknown>[] {
  return [
    ...put.map((one) => store.put(one, [id, one.number])),
    store.delete(keysOf(id, first - 1)),
    store.delete(keysOf(id, Infinity, last + 1)),
  ];
}

function wholeModelsIn(database: () => Promise<IDBPDatabase<Schema>>): Pick<ShelfDatabase, 'putBack' | 'remove'> {
  return {
    putBack: async (models) => {
      const transaction = (await database()).transaction(['files', 'works', 'versions'], 'readwrite');
      const [files, works, versions] = [
        transaction.objectStore('files'),
        transaction.objectStore('works'),
        transaction.objectStore('versions'),
      ];
      for (const { file, work, versions: made } of models) {
        if ((await works.getKey(work.id)) !== undefined) continue;
        const deeds = [files.put(file, work.id), works.put(work, work.id)];
        await Promise.all([...deeds, ...made.map((one) => versions.put(one, [work.id, one.number]))]);
      }
      await transaction.done;
    },
    remove: async (id) => {
      const transaction = (await database()).transaction(['files', 'works', 'versions', 'steps'], 'readwrite');
      await Promise.all([
        transaction.objectStore('files').delete(id),
        transaction.objectStore('works').delete(id),
        transaction.objectStore('versions').delete(keysOf(id)),
        transaction.objectStore('steps').delete(keysOf(id)),
        transaction.done,
      ]);
    },
  };
}

/** The one door to the database library. */
export function openShelfDatabase(name = 'raftmargin shelf'): ShelfDatabase {
  let once: Promise<IDBPDatabase<Schema>> | undefined;
  const database = async (): Promise<IDBPDatabase<Schema>> => {
    once ??= opened(name, () => {
      once = undefined;
    });
    try {
      return await once;
    } catch (reason) {
      // Try again next time, as the browser may then allow it.
      once = undefined;
      throw reason instanceof DOMException && reason.name === 'VersionError' ? new Error(shelfTexts.newer) : reason;
    }
  };
  return {
    list: async () => {
      const { store, done } = (await database()).transaction('works');
      const [keys, values] = await Promise.all([store.getAllKeys(), store.getAll(), done]);
      return new Map(keys.map((key, i) => [key, values[i]]));
    },
    ids: async () => (await database()).getAllKeys('works'),
    read: async (id) => {
      const transaction = (await database()).transaction(['files', 'works']);
      const [file, work] = await Promise.all([
        transaction.objectStore('files').get(id),
        transaction.objectStore('works').get(id),
      ]);
      return { file, work };
    },
    write: async (work, file, steps) => {
      const transaction = (await database()).transaction(['files', 'works', 'steps'], 'readwrite');
      const files = transaction.objectStore('files');
      const deeds: Promise<unknown>[] = [
        file === undefined ? files.getKey(work.id) : files.put(file, file.id),
        transaction.objectStore('works').put(work, work.id),
      ];
      if (steps !== undefined) deeds.push(...stepDeeds(transaction.objectStore('steps'), work.id, steps));
      // Committed explicitly, the transaction ends even if the page closes before it would end by itself.
      transaction.commit();
      const [key] = await Promise.all([...deeds, transaction.done]);
      return key !== undefined;
    },
    steps: async (id) => (await database()).getAll('steps', keysOf(id)),
    setAside: async (id, value) => {
      const transaction = (await database()).transaction('works', 'readwrite');
      if ((await transaction.store.getKey(id)) === undefined) await transaction.store.put(value, id);
      await transaction.done;
    },
    ...wholeModelsIn(database),
    ...versionsIn(database),
  };
}

/** All values of a store in another database, by key; empty where there is no such database or store. */
export async function readForeignStore(name: string, store: string): Promise<Map<string, unknown>> {
  const names = (await indexedDB.databases()).map((one) => one.name);
  if (!names.includes(name)) return new Map();
  const database = await openDB(name);
  try {
    if (!database.objectStoreNames.contains(store)) return new Map();
    const [keys, values] = await Promise.all([database.getAllKeys(store), database.getAll(store)]);
    return new Map(keys.map((key, i) => [typeof key === 'string' ? key : JSON.stringify(key), values[i] as unknown]));
  } finally {
    database.close();
  }
}
