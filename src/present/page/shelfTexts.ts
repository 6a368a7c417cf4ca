import type { Format } from '../text/numberFormat';

/** Texts about the models that are kept on this machine. */
export const shelfTexts = {
  summary: 'Your models',
  about: 'Kept in this browser, on this machine alone. Nothing is let go unless you delete it.',
  none: 'Nothing yet: a model is kept here with its first change.',
  reading: 'Reading …',
  unnamed: 'Without a title',
  copy: (title: string) => `${title} (copy)`,
  openHere: 'open here',
  openElsewhere: 'open in another window',
  open: 'Open',
  duplicate: 'Duplicate',
  delete: 'Delete',
  deleteReally: (title: string) => `Delete “${title}” for good, with its versions?`,
  deleteYes: 'Yes, delete it',
  deleteNo: 'Keep it',
  each: (title: string) => `What can be done with ${title}`,
  asideHeading: 'Set aside: this version cannot read it',
  saveAside: 'Save it as a file',
  copied: 'This is a copy from here on: the model is open in another window, which keeps its own.',
  deletedHere: (title: string) => `Delete “${title}” for good, with its versions? Another model is opened here then.`,
  persisted: 'The browser has promised not to clear them when the disk is full.',
  notPersisted: 'The browser may clear them when the disk is full: save what matters as files.',
  noVersion: (reason: string) => `No version was kept: ${reason}`,
  newer: 'a newer version of this program is open in another window; load this page again',
  full: 'the browser allows this page no more room on the disk: delete models that you no longer need',
  storageSilent: 'the browser’s storage does not answer',
  notRead: (reason: string) => `The shelf cannot be read: ${reason}`,
} as const;

/**
 * `transplant-hire.csv, changed 9 March 2031, 16:30, 23 kB`.
 * @param when the moment of the last change, as it is written
 */
export function entryText(name: string, when: string, size: number, { written }: Pick<Format, 'written'>): string {
  return `${name}, changed ${when}, ${written(String(Math.max(1, Math.round(size / 1000))))} kB`;
}
