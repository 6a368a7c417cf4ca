import { wording } from '../../language/wording';
import type { Format } from '../text/numberFormat';

/** Texts about the models that are kept on this machine. */
export const shelfTexts = {
  summary: wording`Your models`,
  about: wording`Kept in this browser, on this machine alone. Nothing is let go unless you delete it.`,
  none: wording`Nothing yet: a model is kept here with its first change.`,
  reading: wording`Reading …`,
  unnamed: wording`Without a title`,
  copy: (title: string) => wording`${title} (copy)`,
  openHere: wording`open here`,
  openElsewhere: wording`open in another window`,
  open: wording`Open`,
  duplicate: wording`Duplicate`,
  delete: wording`Delete`,
  deleteReally: (title: string) => wording`Delete “${title}” for good, with its versions?`,
  deleteYes: wording`Yes, delete it`,
  deleteNo: wording`Keep it`,
  each: (title: string) => wording`What can be done with ${title}`,
  asideHeading: wording`Set aside: this version cannot read it`,
  saveAside: wording`Save it as a file`,
  copied: wording`This is a copy from here on: the model is open in another window, which keeps its own.`,
  deletedHere: (title: string) =>
    wording`Delete “${title}” for good, with its versions? Another model is opened here then.`,
  persisted: wording`The browser has promised not to clear them when the disk is full.`,
  notPersisted: wording`The browser may clear them when the disk is full: save what matters as files.`,
  noVersion: (reason: string) => wording`No version was kept: ${reason}`,
  newer: wording`a newer version of this program is open in another window; load this page again`,
  full: wording`the browser allows this page no more room on the disk: delete models that you no longer need`,
  storageSilent: wording`the browser’s storage does not answer`,
  notRead: (reason: string) => wording`The shelf cannot be read: ${reason}`,
} as const;

/**
 * `transplant-hire.csv, changed 9 March 2031, 16:30, 23 kB`.
 * @param when the moment of the last change, as it is written
 */
export function entryText(name: string, when: string, size: number, { written }: Pick<Format, 'written'>): string {
  return wording`${name}, changed ${when}, ${written(String(Math.max(1, Math.round(size / 1000))))} kB`;
}
