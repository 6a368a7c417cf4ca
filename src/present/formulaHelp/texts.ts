/** Where the help on formulas stands on the page on methods, as its links name it. */
export const formulaHelpEntry = 'formulas';

/** Words round the help on formulas. */
export const formulaHelpTexts = {
  heading: 'How a formula is written',
  about: 'All that a formula may hold, with examples that the app has worked out itself.',
} as const;
