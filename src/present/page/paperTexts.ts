import { wording } from '../../language/wording';

/** What is said while printing waits. */
export const paperTexts = {
  waiting: wording`It is printed as soon as everything on it is worked out.`,
  now: wording`Print what there is`,
  not: wording`Do not print`,
} as const;
