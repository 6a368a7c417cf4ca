import type { Model } from '../../../model/model';
import { openShipped } from '../files/opening';
import { shelfTexts } from '../../../present/page/shelfTexts';
import { shippedModels } from '../files/shippedModels';
import type { Origin } from '../store/snapshot';
import { reopen } from './changes';
import type { ShelfDatabase } from './database';
import { lockModel, type ModelLock } from './modelLock';
import type { PageMemory } from './pageMemory';
import { isSampleId, isShelfFile, isShelfWork, type ShelfWork } from './record';
import { reasonText } from '../reasonText';

/** What the page starts with. */
export interface Beginning {
  readonly model: Model;
  readonly origin: Origin;
  /** What was kept on this machine, if anything was. */
  readonly work: ShelfWork | undefined;
  /** The lock of the model where it stands on the shelf. */
  readonly lock: ModelLock | undefined;
  /** Whether another page writes this model: it is followed then. */
  readonly isFollowing: boolean;
  /** Why the storage cannot be used; blank where it can. */
  readonly failure: string;
}

/** What the beginning needs of the browser. */
export interface Kept {
  readonly database: ShelfDatabase;
  readonly memory: PageMemory;
  /** Puts what an earlier version kept onto the shelf, once. */
  readonly moveOldWork: () => Promise<void>;
}

/** A storage that has not answered after so many milliseconds is not waited for. */
const patience = 3000;

async function sample(failure: string, key?: string, work?: ShelfWork): Promise<Beginning> {
  const shipped = shippedModels.find((one) => one.key === key) ?? shippedModels[0];
  return { ...(await openShipped(shipped)), work, lock: undefined, isFollowing: false, failure };
}

/** Work that was last told as its page was left, where that is later than what was written. */
function carriedOn(work: ShelfWork, lastText: string | undefined): ShelfWork {
  try {
    const last: unknown = JSON.parse(lastText ?? 'null');
    return isShelfWork(last) && last.id === work.id && last.at > work.at ? last : work;
  } catch {
    return work;
  }
}

/** The newest work that this version can read. */
function newest(all: ReadonlyMap<string, unknown>): ShelfWork | undefined {
  const works = [...all.values()].filter(isShelfWork);
  return works.sort((a, b) => b.at - a.at)[0];
}

async function opened({ database, memory, moveOldWork }: Kept): Promise<Beginning> {
  await moveOldWork();
  const own = memory.model();
  const id = own ?? newest(await database.list())?.id;
  if (id === undefined) return sample('');
  const { file, work } = await database.read(id);
  if (!isShelfWork(work)) return sample('');
  const done = carriedOn(work, memory.lastMoment(id));
  if (isSampleId(id)) return sample('', done.shipped, done);
  if (!isShelfFile(file)) return sample('');
  const lock = lockModel(id);
  const isFollowing = !(await lock.held);
  return { ...reopen(file, done), work: done, lock, isFollowing, failure: '' };
}

/**
 * The work as it was left: that of this tab, else the newest of any. Without any, or where the storage fails or is
 * silent, the first shipped model.
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
