import { readText, writeText } from '../preferences/textStorage';

const modelKey = 'raftmargin model';
const movedKey = 'raftmargin moved to the shelf';
const lastKey = (id: string): string => `raftmargin last moment of ${id}`;

/** Short texts that the browser stores synchronously, as a page that is being left cannot wait. */
export const pageMemory = {
  /** Id of the model that this tab shows; it survives a reload. */
  model: (): string | undefined => readText('sessionStorage', modelKey),
  setModel: (id: string): void => {
    writeText('sessionStorage', modelKey, id);
  },
  /** Whether work kept by an earlier version has been moved onto the shelf. */
  isMoved: (): boolean => readText('localStorage', movedKey) !== undefined,
  setMoved: (): void => {
    writeText('localStorage', movedKey, 'yes');
  },
  /** Work on a model that was not confirmed as written when its page was left. */
  lastMoment: (id: string): string | undefined => readText('localStorage', lastKey(id)),
  setLastMoment: (id: string, text: string | undefined): boolean => writeText('localStorage', lastKey(id), text),
};

export type PageMemory = typeof pageMemory;
