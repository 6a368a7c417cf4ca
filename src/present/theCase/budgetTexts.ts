/** Words round the partial budget of a case. */
export const budgetTexts = {
  caption: (unit: string) => `Partial budget: what changes, each thing once, in ${unit}`,
  part: 'part',
  amount: 'amount',
  sum: 'sum',
  netChange: 'Net change',
} as const;
