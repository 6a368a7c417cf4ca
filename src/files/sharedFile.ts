/** A model file as a link or a page carries it. */
export interface SharedFile {
  /** With its ending. */
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Most characters of a file's name. */
const longestName = 80;

const ownName = 'model.csv';

/** A name that is safe to show and to save under: no folders, no control characters. */
export function cleanName(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? '';
  const clean = last
    .replace(/[\p{C}:*?"<>|]/gu, '')
    .trim()
    .slice(0, longestName);
  return clean === '' || clean.startsWith('.') ? ownName : clean;
}
