/** Words of the beds as a whole. */
export const bedsTexts = {
  plan: 'Beds of',
  noSchedule: 'This model has no crop schedule.',
  makesSchedule:
    'Entries that the column crop of its file tags with boards, interval, stage 1 time and the like make one.',
  print: 'Print the beds',
} as const;
