/** Words of the page on how figures are worked out, round its chapters. */
export const methodTexts = {
  heading: 'How it is worked out',
  print: 'Print how it is worked out',
  about:
    'Every figure in Raftmargin, by the way it is made: the formula, the source, how it is searched or drawn, and what it cannot do. It is no financial advice.',
  contents: 'Methods',
  design: 'Made with',
  source: 'Source',
  limits: 'Limits',
  where: 'Where',
} as const;
