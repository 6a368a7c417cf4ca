import { wording } from '../../language/wording';

/** Words round the choice of a result. */
export const chooserTexts = {
  whose: wording`in`,
  noResults: wording`An entry that is calculated from others will be listed here: give one a formula.`,
} as const;
