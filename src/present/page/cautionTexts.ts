/** Words round cautions. */
export const cautionTexts = {
  heading: 'Take care',
  noSource: 'Common practice, no source.',
  source: (source: string) => `Source: ${source}.`,
} as const;
