import {
  isShelfFile,
  isShelfWork,
  type ShelfFile,
  type ShelfVersion,
  type ShelfWork,
  type WholeModel,
} from '../record';
import { isShelfVersion } from '../versions';

/**
 * The storage of second copies: the browser's caches, which share no file with its database. A browser that finds its
 * database damaged may begin an empty one without a word.
 */
export type CopyStorage = Pick<Cache, 'keys' | 'match' | 'put' | 'delete'>;

/** Work has two places, written by turns: a writing that is cut off leaves the other whole. */
export type Place = 'a' | 'b';

const root = (): string => `${location.origin}/raftmargin-copies/`;
const about = 'x-raftmargin-file';

const addressOf = (id: string, part: string): string => `${root()}${encodeURIComponent(id)}/${part}`;
const partOf = (place: Place): string => `work-${place}`;
const versions = 'version-';

async function textOf(storage: CopyStorage, address: string): Promise<unknown> {
  try {
    return await (await storage.match(address))?.json();
  } catch {
    // It was cut off while it was written.
    return undefined;
  }
}

async function fileAt(storage: CopyStorage, address: string): Promise<ShelfFile | undefined> {
  try {
    const found = await storage.match(address);
    const told: unknown = JSON.parse(decodeURIComponent(found?.headers.get(about) ?? ''));
    const bytes = new Uint8Array((await found?.arrayBuffer()) ?? []);
    const file = { ...(told as object), bytes };
    return isShelfFile(file) ? file : undefined;
  } catch {
    return undefined;
  }
}

/** The work of a model at one of its places; undefined where none can be read there. */
export async function copiedWork(storage: CopyStorage, id: string, place: Place): Promise<ShelfWork | undefined> {
  const work = await textOf(storage, addressOf(id, partOf(place)));
  return isShelfWork(work) && work.id === id ? work : undefined;
}

export async function copyWork(storage: CopyStorage, work: ShelfWork, place: Place): Promise<void> {
  // The steps of undo have no second copy.
  await storage.put(addressOf(work.id, partOf(place)), Response.json({ ...work, steps: undefined }));
}

export async function hasFileCopy(storage: CopyStorage, id: string): Promise<boolean> {
  return (await storage.match(addressOf(id, 'file'))) !== undefined;
}

export async function copyFile(storage: CopyStorage, { bytes, ...told }: ShelfFile): Promise<void> {
  const headers = { [about]: encodeURIComponent(JSON.stringify(told)) };
  await storage.put(addressOf(told.id, 'file'), new Response(bytes, { headers }));
}

/** Adds a version of a model and removes the one before the number `first`, the only one that can be there by then. */
export async function copyVersion(storage: CopyStorage, made: ShelfVersion, first: number): Promise<void> {
  await storage.put(addressOf(made.id, `${versions}${made.number}`), Response.json(made));
  await storage.delete(addressOf(made.id, `${versions}${first - 1}`));
}

/** The addresses of all copies, by the id of their model. */
async function addresses(storage: CopyStorage): Promise<Map<string, string[]>> {
  const found = new Map<string, string[]>();
  for (const { url } of await storage.keys()) {
    if (!url.startsWith(root())) continue;
    const id = decodeURIComponent(url.slice(root().length).split('/')[0] ?? '');
    found.set(id, [...(found.get(id) ?? []), url]);
  }
  return found;
}

export async function removeCopies(storage: CopyStorage, id: string): Promise<void> {
  const those = (await addresses(storage)).get(id) ?? [];
  await Promise.all(those.map((address) => storage.delete(address)));
}

/** Every model of which the file and some work can be read, each as it stood last. */
export async function readCopies(storage: CopyStorage): Promise<WholeModel[]> {
  const models: WholeModel[] = [];
  for (const [id, those] of await addresses(storage)) {
    const file = await fileAt(storage, addressOf(id, 'file'));
    const works = await Promise.all([copiedWork(storage, id, 'a'), copiedWork(storage, id, 'b')]);
    const [work] = works.filter((one) => one !== undefined).sort((x, y) => y.at - x.at);
    if (file === undefined || work === undefined) continue;
    const kept = those.filter((address) => address.startsWith(addressOf(id, versions)));
    const made = await Promise.all(kept.map((address) => textOf(storage, address)));
    models.push({ file, work, versions: made.filter(isShelfVersion) });
  }
  return models;
}
