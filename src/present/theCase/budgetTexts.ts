/** Words round the partial budget of a case. */
export const budgetTexts = {
  goTo: (label: string) => `Go to ${label}`,
  caption: (unit: string) => `Partial budget: what changes, each thing once, in ${unit}`,
  entry: 'entry',
  amount: 'amount',
  sum: 'sum',
  netChange: 'Net change',
} as const;
