import { wording } from '../../language/wording';
import { commonTexts } from '../text/commonTexts';

/** Words of a case that somebody was sent as one live page, and of making one. */
export const liveTexts = {
  // Where it is made.
  save: wording`Save as a live page`,
  saveHint: wording`One HTML file that opens in any browser, without a network: whoever reads it can move the numbers. It holds the whole model; give it to those who may see your numbers.`,
  making: wording`One moment: the page is being made …`,
  saved: (name: string, kilobytes: string) => wording`Saved as ${name}, ${kilobytes} kB.`,
  noPage: (reason: string) => wording`its template is not there (${reason}). Go on line once, and try again.`,
  notMade: (reason: string) => wording`No page was made: ${reason}`,

  // On the page that was sent.
  madeOn: (day: string) => wording`Made with Raftmargin on ${day}.`,
  madeWith: wording`Made with Raftmargin.`,
  private: wording`All is worked out in this page: nothing is sent, and nothing is kept when you close it.`,
  move: wording`Move the numbers`,
  moveHint: wording`The case follows. Only numbers on which it rests are shown; their ranges are the sender’s.`,
  noneToMove: wording`No number of this model moves the case.`,
  asSent: (value: string) => wording`sent: ${value}`,
  putBack: (label: string) => wording`Put back ${label}`,
  back: commonTexts.takeBack,
  allBack: wording`All numbers as sent`,
  changed: (count: number) =>
    count === 0
      ? wording`The numbers are as they were sent.`
      : count === 1
        ? wording`One number is yours, not the sender’s.`
        : wording`${count} numbers are yours, not the sender’s.`,
  saveModel: wording`Save the model (CSV)`,
  modelSaved: (name: string, changed: boolean) =>
    changed ? wording`Saved as ${name}, with your numbers.` : wording`Saved as ${name}, as it was sent.`,
  openApp: wording`Open in Raftmargin`,
  fault: wording`The model in this page has faults; the case stands as far as it can be worked out:`,

  // Where the page cannot work.
  still: wording`The numbers cannot be moved here: the page needs a browser with JavaScript, or a part of the file is missing. What you see is the case as it was sent.`,
} as const;

/** When and with what a page was made. @param day as it is written; blank where it is not known */
export function madeLine(day: string): string {
  return day === '' ? liveTexts.madeWith : liveTexts.madeOn(day);
}
