/** Words on whose hours are paid. */
export const staffTexts = {
  heading: 'Whose hours are paid',
  noEntries: 'No input is in hours a week, such as h/week, so only the hours needed are counted.',
  rule: 'In each week a hire is paid for the hours that the present staff cannot cover, or for the hours guaranteed, whichever is more. Taken from the words of the entries until you choose.',
  choose: 'choose an entry, or none',
  none: 'none',
  beyond: 'Beyond one person’s hours',
  overtime: 'overtime',
  secondHire: 'a second hire, as much guaranteed',
} as const;
