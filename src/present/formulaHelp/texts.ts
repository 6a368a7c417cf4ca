/** Id of the help on formulas on the page on methods; links use it. */
export const formulaHelpEntry = 'formulas';

/** Words round the help on formulas. */
export const formulaHelpTexts = {
  heading: 'How a formula is written',
  about: 'All that a formula may hold, with examples that the app has worked out itself.',
} as const;
