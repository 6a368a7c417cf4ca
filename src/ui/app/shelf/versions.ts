import type { ShelfDatabase } from './database';
import { isFieldTexts, isLayout, isTexts, type ShelfVersion, type ShelfWork } from './record';

/** Versions of a model that are kept; with another one the oldest goes. */
export const keptVersions = 50;

/** Milliseconds without a change that make a quiet moment, and those between two versions of work that goes on. */
const quiet = 2000;
const between = 60_000;

/** Makes versions of the models that this page writes. */
export interface Versions {
  /** Work is on the disk: it becomes a version at a quiet moment, at most once a minute. */
  readonly written: (work: ShelfWork) => void;
  /** Makes a version at once, unless the last one is the same. */
  readonly save: (work: ShelfWork) => Promise<void>;
}

/** The newest version of a model; number 0 where there is none. */
type Newest = Pick<ShelfVersion, 'number' | 'at' | 'changes' | 'layout' | 'own'>;

/** The words of the case and the timed batches among what is chosen. */
export function ownTexts(choice: ShelfWork['choice']): Record<string, string> {
  const isOwn = ([key, text]: readonly [string, string]): boolean =>
    /^setting (?:case|trials)/.test(key) && text !== '';
  return Object.fromEntries(Object.entries(choice).filter(isOwn));
}

/** What is chosen, with other words of the case and timed batches. */
export function withOwnTexts(
  choice: ShelfWork['choice'],
  own: Readonly<Record<string, string>>,
): Record<string, string> {
  const now = ownTexts(choice);
  return { ...Object.fromEntries(Object.entries(choice).filter(([key]) => !(key in now))), ...own };
}

/** Whether what the storage gave is a version that this version of the program can read. */
export function isShelfVersion(value: unknown): value is ShelfVersion {
  if (typeof value !== 'object' || value === null) return false;
  const { version, id, number, at, title, changes, layout, own } = value as Partial<
    Record<keyof ShelfVersion, unknown>
  >;
  return (
    version === 1 &&
    (layout === undefined || isLayout(layout)) &&
    (own === undefined || isTexts(own)) &&
    [id, title].every((text) => typeof text === 'string') &&
    [number, at].every((one) => typeof one === 'number') &&
    isFieldTexts(changes)
  );
}

/** What is compared to tell whether work is that of the newest version. */
type Told = Pick<ShelfVersion, 'changes' | 'layout' | 'own'>;

function sameWork(a: Told, b: Told): boolean {
  const sorted = ({ own = {} }: Told): unknown => Object.entries(own).sort(([x], [y]) => (x < y ? -1 : 1));
  return JSON.stringify([a.changes, a.layout, sorted(a)]) === JSON.stringify([b.changes, b.layout, sorted(b)]);
}

const none: Newest = { number: 0, at: -Infinity, changes: [] };

function newestOf(found: readonly unknown[]): Newest {
  const [newest] = found;
  return isShelfVersion(newest) ? newest : none;
}

/** Adds a version of work to those of its model, unless the newest one is the same; gives the newest then. */
async function addAfter(database: ShelfDatabase, newest: Newest, work: ShelfWork): Promise<Newest> {
  const own = ownTexts(work.choice);
  if (sameWork(newest, { ...work, own })) return newest;
  const { id, title, changes, layout } = work;
  const number = newest.number + 1;
  const made = { version: 1, id, number, at: Date.now(), title, changes, layout, own } as const;
  await database.addVersion(made, number - keptVersions + 1);
  return made;
}

/** Makes a version of work at once, for a model that no page has open. */
export async function addVersionOf(database: ShelfDatabase, work: ShelfWork): Promise<void> {
  await addAfter(database, newestOf(await database.versions(work.id, 1)), work);
}

/** @param failed is called where a version could not be stored */
export function createVersions(database: ShelfDatabase, failed: (reason: unknown) => void): Versions {
  const newest = new Map<string, Newest>();
  let latest: ShelfWork | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const look = async (id: string): Promise<void> => {
    if (newest.has(id)) return;
    const found = newestOf(await database.versions(id, 1));
    if (!newest.has(id)) newest.set(id, found);
  };
  const save = async (work: ShelfWork): Promise<void> => {
    // Without a wait where the newest is known: a page that is left has no time for one.
    if (!newest.has(work.id)) await look(work.id);
    const known = newest.get(work.id) ?? none;
    // Noted before it is on the disk, so that a second saving at the same moment makes no second version.
    const own = ownTexts(work.choice);
    if (!sameWork(known, { ...work, own })) newest.set(work.id, { ...work, own, number: known.number + 1 });
    try {
      newest.set(work.id, await addAfter(database, known, work));
    } catch (reason) {
      newest.set(work.id, known);
      throw reason;
    }
  };
  const atRest = (): void => {
    if (latest === undefined) return;
    const wait = (newest.get(latest.id)?.at ?? -Infinity) + between - Date.now();
    if (wait > 0) timer = setTimeout(atRest, wait);
    else save(latest).catch(failed);
  };
  return {
    written: (work) => {
      clearTimeout(timer);
      // Another model was opened: the one before is left.
      if (latest !== undefined && latest.id !== work.id) save(latest).catch(failed);
      latest = work;
      timer = setTimeout(atRest, quiet);
      look(work.id).catch(failed);
    },
    save,
  };
}
