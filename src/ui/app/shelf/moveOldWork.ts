import { readModel } from '../../../files/readModel';
import type { ShelfDatabase } from './database';
import { isFieldTexts, isTexts, type FieldText, type ShelfFile, type ShelfWork } from './record';

/** A tab's work as the version before this one kept it: the file as it was opened, and the changes since. */
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

function entryOf({ name, shipped, bytes, opened, changes, drafts, choice, at }: TabWork): [ShelfWork, ShelfFile] {
  // The newest work was also kept under a second key; by this id both are one.
  const id = `moved ${opened} ${at}`;
  const { title } = readModel(bytes).model;
  const head = { version: 2, id, name, shipped } as const;
  return [
    { ...head, title, size: bytes.length, isCopy: false, changes, drafts, choice, at },
    { ...head, opened, bytes },
  ];
}

/** Copies the work that the version before this one kept, by its keys there, onto the shelf. */
export async function moveOldWork(shelf: ShelfDatabase, kept: ReadonlyMap<string, unknown>): Promise<void> {
  for (const [key, value] of kept) {
    if (isTabWork(value)) await shelf.write(...entryOf(value));
    else await shelf.setAside(`set aside ${key}`, value);
  }
}
