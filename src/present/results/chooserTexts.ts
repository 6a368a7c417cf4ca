import { wording, wordingOf } from '../../language/wording';

/** Words round the choice of a result. */
export const chooserTexts = {
  whose: wordingOf('a result in a plan, or in the difference')`in`,
  noResults: wording`An entry that is calculated from others will be listed here: give one a formula.`,
} as const;
