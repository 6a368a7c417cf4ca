/** Fixed texts of the table of all steps. */
export const resultsTexts = {
  heading: 'Each step',
  table: 'Table of the steps',
  batches: 'Batches',
  from: 'from',
  to: 'to',
  needed: 'Needed in all',
  standard: 'Standard time, s',
  lost: 'Lost',
  leftOutBatches: 'Left out',
  confidence: 'Confidence, %',
  allowance: 'Allowance, %',
  allowanceOf: 'Allowance of the',
  within: 'Needed for within, %',
  leftOut: (batches: number) => `${batches} left out`,
  howMany: 'How many batches are needed',
} as const;
