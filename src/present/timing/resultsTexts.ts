/** Fixed texts of the table of all steps. */
export const resultsTexts = {
  heading: 'Each step',
  step: 'Step',
  batches: 'Batches',
  secondsEach: 's each',
  from: 'from',
  to: 'to',
  needed: 'Needed in all',
  standard: 'Standard time, s',
  plants: 'Plants',
  lost: 'Lost',
  leftOut: (batches: number) => `${batches} left out`,
  saveTable: 'Save this table as CSV',
  howMany: 'How many batches are needed',
} as const;
