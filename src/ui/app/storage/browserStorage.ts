import { createStore, delMany, entries, get, promisifyRequest, type UseStore } from 'idb-keyval';

/** The work last written in any tab of the browser: what a new tab begins with. */
const newest = 'session';
const lastKey = 'raftmargin last moment';
const tabKey = 'raftmargin tab';
/** Tabs whose work is kept apart; the longest unwritten one goes first. */
const mostTabs = 6;

/** The browser's own storage. */
export interface BrowserStorage {
  /** The work of this tab, else the newest of any. Rejects where the browser refuses storage, as `write` does. */
  read(): Promise<unknown>;
  /** Keeps the work whole or not at all. */
  write(value: unknown): Promise<void>;
  /** Keeps a short text at once, for a page that is being left and cannot wait; false where that is refused. */
  writeLast(text: string): boolean;
  /** The text last kept at once; blank for none. */
  readLast(): string;
}

/** Opened once: a page that is left at once has no time to open it again. */
let store: UseStore | undefined;

function opened(): UseStore {
  store ??= createStore('raftmargin', 'kept');
  return store;
}

/** The key of this tab's own work, the same after a reload; another tab's writing never takes its place. */
function ownKey(): string {
  const tab = readText('sessionStorage', tabKey) ?? `${Date.now()} ${Math.random()}`;
  return writeText('sessionStorage', tabKey, tab) ? `${newest} of ${tab}` : newest;
}

/** Of a tab, or of all; where it is refused, the property itself throws. */
type TextStorage = 'sessionStorage' | 'localStorage';

/** A short text that the browser keeps; undefined for none, and where it refuses. */
function readText(storage: TextStorage, key: string): string | undefined {
  try {
    return window[storage].getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** False where the browser refuses. */
function writeText(storage: TextStorage, key: string, text: string): boolean {
  try {
    window[storage].setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

function writtenAt(value: unknown): number {
  return typeof value === 'object' && value !== null && 'at' in value && typeof value.at === 'number' ? value.at : 0;
}

/** Forgets the work of tabs closed long ago. */
async function forgetOldTabs(): Promise<void> {
  const all = await entries<string, unknown>(opened());
  const tabs = all.filter(([key]) => key !== newest).sort(([, a], [, b]) => writtenAt(b) - writtenAt(a));
  await delMany(
    tabs.slice(mostTabs).map(([key]) => key),
    opened(),
  );
}

/** The one door to idb-keyval. */
export const browserStorage: BrowserStorage = {
  read: async () => {
    await forgetOldTabs();
    const own = await get<unknown>(ownKey(), opened());
    if (own !== undefined) return own;
    // A new tab goes on with what was last done in any.
    writeText('sessionStorage', lastKey, readText('localStorage', lastKey) ?? '');
    return get<unknown>(newest, opened());
  },
  write: async (value) =>
    opened()('readwrite', (kept) => {
      kept.put(value, ownKey());
      kept.put(value, newest);
      // Asked for here, it is done even if the page is gone by then.
      kept.transaction.commit();
      return promisifyRequest(kept.transaction);
    }),
  writeLast: (text) => writeText('sessionStorage', lastKey, text) && writeText('localStorage', lastKey, text),
  readLast: () => readText('sessionStorage', lastKey) ?? '',
};
