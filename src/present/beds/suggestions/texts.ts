import { wording } from '../../../language/wording';

/** Words round the suggestions of what would finish more. */
export const suggestionTexts = {
  heading: wording`What would help, each by itself`,
  none: wording`No other interval, density or half week that was tried finishes more.`,
  tryIt: wording`Try it`,
  scope: wording`Counted is room only: what fewer days or more holes do to the plants, their price and the hours is not in it. Undo takes a try back.`,
} as const;
