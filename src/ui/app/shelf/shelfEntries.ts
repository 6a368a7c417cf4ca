import { writeTable } from '../../../files/writeTable';
import { download } from '../files/saving';
import { reopen } from './changes';
import type { ShelfDatabase } from './database';
import { heldModels } from './heldModels';
import { shippedModels } from '../files/shippedModels';
import { isSampleId, isShelfFile, isShelfWork, sampleId, type ShelfWork } from './record';

/** The contents of the shelf. */
export interface ShelfList {
  /** The newest first. */
  readonly works: readonly ShelfWork[];
  /** Values that this version cannot read, by id. */
  readonly aside: readonly { readonly id: string; readonly value: unknown }[];
  /** Ids of the models that some page now writes. */
  readonly held: ReadonlySet<string>;
}

export async function listShelf(database: ShelfDatabase): Promise<ShelfList> {
  const [all, held] = await Promise.all([database.list(), heldModels()]);
  const entries = [...all].filter(([id]) => !isSampleId(id));
  const works = entries.flatMap(([, value]) => (isShelfWork(value) ? value : []));
  return {
    works: works.sort((a, b) => b.at - a.at),
    aside: entries.filter(([, value]) => !isShelfWork(value)).map(([id, value]) => ({ id, value })),
    held,
  };
}

/** Id of the model opened once one is deleted: the newest other that no page has open, else the first sample. */
export function nextAfter(list: ShelfList | undefined, id: string): string {
  const next = list?.works.find((work) => work.id !== id && !list.held.has(work.id));
  return next?.id ?? sampleId(shippedModels[0].key);
}

/** Adds a copy of a model to the shelf. */
export async function duplicate(database: ShelfDatabase, id: string): Promise<void> {
  const { file, work } = await database.read(id);
  if (!isShelfFile(file) || !isShelfWork(work)) return;
  const copy = crypto.randomUUID();
  await database.write({ ...work, id: copy, isCopy: true, steps: undefined, at: Date.now() }, { ...file, id: copy });
}

/** Saves the file of a model as it was left, through the browser. */
export async function saveEntry(database: ShelfDatabase, id: string): Promise<void> {
  const { file, work } = await database.read(id);
  if (!isShelfFile(file) || !isShelfWork(work)) return;
  const { model, origin } = reopen(file, work);
  download(file.name, writeTable(origin.file, model.sheet));
}

/** Saves a value that this version cannot read, as text. */
export function saveAside(id: string, value: unknown): void {
  const text = JSON.stringify(value, (_key, part: unknown) => (part instanceof Uint8Array ? [...part] : part), 2);
  download(`${id.replace(/[^\w-]+/g, '-')}.json`, text, 'application/json');
}
