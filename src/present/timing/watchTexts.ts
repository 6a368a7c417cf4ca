/** Words of the watch for one batch. */
export const watchTexts = {
  heading: 'Time a batch',
  start: 'Start the watch',
  byHand: 'Enter a batch by hand',
  nameFirst: 'Name the step first.',
  stepExample: 'such as transplanting',
  runsFor: (step: string) => `The watch runs for ${step}`,
  letGo: 'Let it go',
  since: (step: string, start: string) =>
    `Timing ${step} since ${start}. It runs on while you look elsewhere, and with this page closed.`,
  fromTo: (start: string, end: string) => `From ${start} to ${end}.`,
  plants: (step: string) => `Plants in this batch of ${step}`,
  add: 'Add the batch',
  countPlants: 'Count the plants of the batch.',
  noCount: (typed: string) => `plants not a whole number above 0: ${typed}. Count the plants of the batch.`,
} as const;
