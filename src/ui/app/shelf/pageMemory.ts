/** Of a tab, or of all tabs; where it is refused, the property itself throws. */
type TextStorage = 'sessionStorage' | 'localStorage';

/** Undefined for none, and where the browser refuses. */
function readText(storage: TextStorage, key: string): string | undefined {
  try {
    return window[storage].getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** False where the browser refuses; undefined takes the text away. */
function writeText(storage: TextStorage, key: string, text: string | undefined): boolean {
  try {
    if (text === undefined) window[storage].removeItem(key);
    else window[storage].setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

const modelKey = 'raftmargin model';
const movedKey = 'raftmargin moved to the shelf';
const lastKey = (id: string): string => `raftmargin last moment of ${id}`;

/** Short texts that the browser keeps at once, for a page that is being left and cannot wait. */
export const pageMemory = {
  /** The model that this tab shows; the same after a reload. */
  model: (): string | undefined => readText('sessionStorage', modelKey),
  setModel: (id: string): void => {
    writeText('sessionStorage', modelKey, id);
  },
  /** Whether what an earlier version kept stands on the shelf. */
  isMoved: (): boolean => readText('localStorage', movedKey) !== undefined,
  setMoved: (): void => {
    writeText('localStorage', movedKey, 'yes');
  },
  /** The work on a model that was not confirmed when its page was left. */
  lastMoment: (id: string): string | undefined => readText('localStorage', lastKey(id)),
  setLastMoment: (id: string, text: string | undefined): boolean => writeText('localStorage', lastKey(id), text),
};

export type PageMemory = typeof pageMemory;
