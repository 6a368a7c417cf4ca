import { wording } from '../../language/wording';

/** Words of the beds as a whole. */
export const bedsTexts = {
  plan: wording`Beds of`,
  noSchedule: wording`This model has no crop schedule.`,
  makesSchedule: wording`Entries that the column crop of its file tags with boards, interval, stage 1 time and the like make one.`,
  print: wording`Print the beds`,
} as const;
