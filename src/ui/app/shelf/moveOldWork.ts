import { openDB } from 'idb';
import { readModel } from '../../../files/readModel';
import type { ShelfDatabase } from './database';
import { isFieldTexts, isTexts, type FieldText, type ShelfFile, type ShelfWork } from './record';

/** What the version before this one kept of a tab: the file as it was opened, and what was done with it. */
interface TabWork {
  readonly name: string;
  readonly shipped: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly opened: number;
  readonly changes: readonly FieldText[];
  readonly drafts: readonly FieldText[];
  readonly choice: Readonly<Record<string, string>>;
  readonly at: number;
}

function isTabWork(value: unknown): value is TabWork {
  if (typeof value !== 'object' || value === null) return false;
  const { version, name, shipped, bytes, opened, changes, drafts, choice, at } = value as Partial<
    Record<keyof TabWork | 'version', unknown>
  >;
  return (
    version === 1 &&
    typeof name === 'string' &&
    typeof shipped === 'string' &&
    bytes instanceof Uint8Array &&
    typeof opened === 'number' &&
    isFieldTexts(changes) &&
    isFieldTexts(drafts) &&
    isTexts(choice) &&
    typeof at === 'number'
  );
}

function entryOf({ name, shipped, bytes, opened, ...done }: TabWork, id: string): [ShelfWork, ShelfFile] {
  const { title } = readModel(bytes).model;
  return [
    { version: 2, id, name, title, shipped, size: bytes.length, isCopy: false, ...withoutVersion(done) },
    { version: 2, id, name, shipped, opened, bytes },
  ];
}

function withoutVersion({ changes, drafts, choice, at }: Omit<TabWork, 'name' | 'shipped' | 'bytes' | 'opened'>) {
  return { changes, drafts, choice, at };
}

/** The database of the version before this one, and what it held. */
const old = { name: 'raftmargin', store: 'kept' };

/** Puts the work that the version before this one kept onto the shelf. The old database stays as it is. */
export async function moveOldWork(shelf: ShelfDatabase): Promise<void> {
  const names = (await indexedDB.databases()).map(({ name }) => name);
  if (!names.includes(old.name)) return;
  const database = await openDB(old.name);
  try {
    if (!database.objectStoreNames.contains(old.store)) return;
    const [keys, values] = await Promise.all([database.getAllKeys(old.store), database.getAll(old.store)]);
    const seen = new Set<string>();
    for (const [i, value] of (values as unknown[]).entries()) {
      if (!isTabWork(value)) {
        await shelf.setAside(`set aside ${String(keys[i])}`, value);
        continue;
      }
      // The newest work of any tab was kept a second time under a key of its own.
      const id = `moved ${value.opened} ${value.at}`;
      if (seen.has(id)) continue;
      seen.add(id);
      await shelf.write(...entryOf(value, id));
    }
  } finally {
    database.close();
  }
}
