import { wording } from '../../../language/wording';

/** Words on whose hours are paid. */
export const staffTexts = {
  heading: wording`Whose hours are paid`,
  noEntries: wording`No input is in hours a week, such as h/week, so only the hours needed are counted.`,
  rule: wording`In each week a hire is paid for the hours that the present staff cannot cover, or for the hours guaranteed, whichever is more. Taken from the words of the entries until you choose.`,
  choose: wording`choose an entry, or none`,
  none: wording`none`,
  beyond: wording`Beyond one person’s hours`,
  overtime: wording`overtime`,
  secondHire: wording`a second hire, as much guaranteed`,
} as const;
