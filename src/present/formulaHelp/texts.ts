import { wording } from '../../language/wording';

/** Id of the help on formulas on the page on methods; links use it. */
export const formulaHelpEntry = 'formulas';

/** Words round the help on formulas. */
export const formulaHelpTexts = {
  heading: wording`How a formula is written`,
  about: wording`All that a formula may hold, with examples that the app has worked out itself.`,
} as const;
