/** The storage of a tab, or of all tabs. Where the browser refuses it, reading the property throws. */
type TextStorage = 'sessionStorage' | 'localStorage';

/** The text under a key; undefined where there is none or the browser refuses. */
export function readText(storage: TextStorage, key: string): string | undefined {
  try {
    return window[storage].getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Stores a text, or removes it where it is undefined; false where the browser refuses. */
export function writeText(storage: TextStorage, key: string, text: string | undefined): boolean {
  try {
    if (text === undefined) window[storage].removeItem(key);
    else window[storage].setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
