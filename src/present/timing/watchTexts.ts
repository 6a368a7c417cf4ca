import { wording } from '../../language/wording';

/** Words of the watch for one batch. */
export const watchTexts = {
  heading: wording`Time a batch`,
  start: wording`Start the watch`,
  large: wording`Large watch for wet hands`,
  close: wording`Close`,
  way: wording`Way of working, if you compare two`,
  wayExample: wording`such as at the bed`,
  plantsEach: wording`Plants in each batch`,
  /** @param way blank for none */
  batchOf: (step: string, plants: string, way: string) =>
    way.trim() === ''
      ? wording`${step}, ${plants} plants a batch`
      : wording`${step}, ${plants} plants a batch, ${way.trim()}`,
  begin: wording`Start`,
  done: wording`Batch done`,
  doneHint: wording`It is kept, and the next one runs.`,
  beginHint: wording`One press starts the first batch.`,
  needs: wording`Name the step and count the plants of a batch first.`,
  takeLastBack: wording`Take the last one back`,
  endHere: wording`End without this one`,
  lastWas: (plants: string, seconds: string) => wording`Last batch: ${plants} plants in ${seconds} s.`,
  lastBack: wording`The last batch was taken back: its time runs on.`,
  lastOut: wording`The last batch was taken back.`,
  keptOn: wording`The screen stays on while the watch runs.`,
  mayDim: wording`This browser cannot keep the screen on; the time runs on behind a dark screen.`,
  byHand: wording`Enter a batch by hand`,
  nameFirst: wording`Name the step first.`,
  stepExample: wording`such as transplanting`,
  runsFor: (step: string) => wording`The watch runs for ${step}`,
  letGo: wording`Let it go`,
  since: (step: string, start: string) =>
    wording`Timing ${step} since ${start}. It runs on while you look elsewhere, and with this page closed.`,
  fromTo: (start: string, end: string) => wording`From ${start} to ${end}.`,
  plants: (step: string) => wording`Plants in this batch of ${step}`,
  add: wording`Add the batch`,
  countPlants: wording`Count the plants of the batch.`,
  noCount: (typed: string) => wording`plants not a whole number above 0: ${typed}. Count the plants of the batch.`,
} as const;
