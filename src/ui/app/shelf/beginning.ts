import type { Model } from '../../../model/model';
import { openShipped } from '../files/opening';
import { shelfTexts } from '../../../present/page/shelfTexts';
import { shippedModels } from '../files/shippedModels';
import type { Values } from '../../../model/values';
import type { Origin, Snapshot } from '../store/snapshot';
import { reopen } from './changes';
import type { ShelfDatabase } from './database';
import { carriedOn, leftWhole } from './lastMoment';
import { lockModel, type ModelLock } from './modelLock';
import type { PageMemory } from './pageMemory';
import { isSampleId, isShelfFile, isShelfWork, type ShelfWork } from './record';
import { reasonText } from '../reasonText';

/** What the page starts with. */
export interface Beginning {
  readonly model: Model;
  readonly origin: Origin;
  /** The values of its plans, where they have been computed already. */
  readonly values?: readonly Values[];
  /** The kept work, if there is any. */
  readonly work: ShelfWork | undefined;
  /** The lock of the model, where the model is kept on the shelf. */
  readonly lock: ModelLock | undefined;
  /** Whether another page writes this model, so that this page follows it. */
  readonly isFollowing: boolean;
  /** Whether the database lacks the model, which stood in the page's memory. */
  readonly isUnwritten?: boolean;
  /** Why the storage cannot be used; blank where it can. */
  readonly failure: string;
  /** What is to be said of models that were put back; blank where none were. */
  readonly news?: string;
}

/** What the beginning needs of the browser: its storage. */
export interface Kept {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  /**
   * Puts models back from their second copies where the browser has lost its database; gives what is to be said of it,
   * blank where none were put back.
   */
  readonly putBack: () => Promise<string>;
  /** Moves work kept by an earlier version of the program onto the shelf, once. */
  readonly moveOldWork: () => Promise<void>;
}

/** Milliseconds after which a storage that has not answered is no longer waited for. */
const patience = 3000;

async function sample(failure: string, key?: string, work?: ShelfWork): Promise<Beginning> {
  const shipped = shippedModels.find((one) => one.key === key) ?? shippedModels[0];
  return ofSample(await openShipped(shipped), failure, work);
}

function ofSample(snapshot: Snapshot, failure: string, work?: ShelfWork): Beginning {
  return { ...snapshot, work, lock: undefined, isFollowing: false, failure };
}

/** What a browser that was never here will open most likely, asked for while its storage is read. */
function sampleAhead({ memory }: Kept): Promise<Snapshot> | undefined {
  if (memory.isMoved()) return undefined;
  const opening = openShipped(shippedModels[0]);
  // Told by whoever opens it.
  opening.catch(() => undefined);
  return opening;
}

/** The newest work that this version can read. */
function newest(all: ReadonlyMap<string, unknown>): ShelfWork | undefined {
  const works = [...all.values()].filter(isShelfWork);
  return works.sort((a, b) => b.at - a.at)[0];
}

async function shown(kept: Kept, ahead: Promise<Snapshot> | undefined): Promise<Beginning> {
  const { database, memory } = kept;
  const own = memory.model();
  const id = own ?? newest(await database.list())?.id;
  if (id === undefined) return ahead === undefined ? sample('') : ofSample(await ahead, '');
  const stored = await database.read(id);
  const left = isShelfWork(stored.work) ? undefined : leftWhole(id, memory.lastMoment(id));
  const { file, work } = left ?? stored;
  if (!isShelfWork(work)) return sample('');
  const done = carriedOn(work, memory.lastMoment(id));
  if (isSampleId(id)) return sample('', done.shipped, done);
  if (!isShelfFile(file)) return sample('');
  const lock = lockModel(id);
  const isFollowing = !(await lock.held);
  return { ...reopen(file, done), work: done, lock, isFollowing, isUnwritten: left !== undefined, failure: '' };
}

async function opened(kept: Kept): Promise<Beginning> {
  const ahead = sampleAhead(kept);
  const news = await kept.putBack();
  await kept.moveOldWork();
  return { ...(await shown(kept, ahead)), news };
}

/**
 * Opens the work where it was left: that of this tab, else the newest of any tab. Without any, or where the storage
 * fails or does not answer, opens the first shipped model.
 */
export async function begin(kept: Kept): Promise<Beginning> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<Beginning>((give) => {
    timer = setTimeout(() => give(sample(shelfTexts.storageSilent)), patience);
  });
  try {
    return await Promise.race([opened(kept), late]);
  } catch (reason) {
    return await sample(reasonText(reason));
  } finally {
    clearTimeout(timer);
  }
}
