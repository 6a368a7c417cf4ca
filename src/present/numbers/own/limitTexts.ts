import { wording, wordingOf } from '../../../language/wording';

/** Words beside an entry that is a limit, and none at 0. */
export const limitTexts = {
  noLimit: wording`no limit`,
  none: wordingOf('no limit')`none`,
  /** The same to those who hear it. */
  lift: (label: string) => wording`none: no limit for ${label}`,
} as const;
