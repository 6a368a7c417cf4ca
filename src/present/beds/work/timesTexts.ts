import { wording } from '../../../language/wording';

/** Words on what the hours of the work are made of. */
export const timesTexts = {
  heading: wording`What the hours are made of`,
  noEntries: wording`No entry is a time for each plant or board, such as s/plant, so no hours are counted.`,
  rule: wording`Taken from the words of the entries until you choose; paid for every plant that enters a step.`,
  noAllowance: wording`No allowance is added.`,
  allowance: (label: string) => wording`${label} is added.`,
} as const;
