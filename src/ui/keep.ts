import { createStore, get, set } from 'idb-keyval';

/** Everything that a reload gives back, under one key so that it is written whole or not at all. */
const key = 'session';
const lastKey = 'raftmargin last moment';

/** The browser's own storage. */
export interface Keep {
  /** Rejects where the browser refuses storage, as `write` does. */
  read(): Promise<unknown>;
  write(value: unknown): Promise<void>;
  /** Keeps a short text at once, for a page that is being left and cannot wait; false where that is refused. */
  writeLast(text: string): boolean;
  /** The text last kept at once; blank for none. */
  readLast(): string;
}

/** The one door to idb-keyval. */
export const keep: Keep = {
  read: async () => get<unknown>(key, createStore('raftmargin', 'kept')),
  write: async (value) => set(key, value, createStore('raftmargin', 'kept')),
  writeLast: (text) => {
    try {
      localStorage.setItem(lastKey, text);
      return true;
    } catch {
      return false;
    }
  },
  readLast: () => {
    try {
      return localStorage.getItem(lastKey) ?? '';
    } catch {
      return '';
    }
  },
};
