/** Words on what the hours of the work are made of. */
export const timesTexts = {
  heading: 'What the hours are made of',
  noEntries: 'No entry is a time for each plant or board, such as s/plant, so no hours are counted.',
  rule: 'Taken from the words of the entries until you choose; paid for every plant that enters a step.',
  noAllowance: 'No allowance is added.',
  allowance: (label: string) => `${label} is added.`,
} as const;
