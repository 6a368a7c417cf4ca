import { fileTexts } from '../../../present/page/fileTexts';
import type { Opened } from '../files/opening';
import type { Snapshot } from '../store/snapshot';
import type { ShelfDatabase } from './database';
import { storageFault } from './storageFault';

/** What became of several files. */
export interface Imported {
  /** The last that could be read; undefined where none could. */
  readonly last: Snapshot | undefined;
  /** Number of the others that stand on the shelf now. */
  readonly others: number;
  /** Why a file has no place there, a sentence each. */
  readonly refused: readonly string[];
}

async function putOnShelf(database: ShelfDatabase, { model, origin }: Snapshot): Promise<void> {
  const { name, shipped, opened, bytes } = origin;
  const head = { version: 2, id: crypto.randomUUID(), name, shipped } as const;
  const work = { title: model.title, size: bytes.length, isCopy: false, changes: [], drafts: [], choice: {} };
  await database.write({ ...head, ...work, at: opened }, { ...head, opened, bytes });
}

/** Reads files one after another and puts each on the shelf, except the last that can be read, which will be opened. */
export async function importFiles(
  database: ShelfDatabase,
  files: readonly File[],
  read: (file: File) => Promise<Opened>,
): Promise<Imported> {
  const refused: string[] = [];
  let others = 0;
  let last: Snapshot | undefined;
  const store = async (snapshot: Snapshot): Promise<void> => {
    try {
      await putOnShelf(database, snapshot);
      others += 1;
    } catch (reason) {
      refused.push(fileTexts.refusedOf(snapshot.origin.name, storageFault(reason)));
    }
  };
  for (const file of files) {
    const opened = await read(file);
    if ('refusal' in opened) refused.push(fileTexts.refusedOf(file.name, opened.refusal.message));
    else {
      if (last !== undefined) await store(last);
      last = opened;
    }
  }
  return { last, others, refused };
}
