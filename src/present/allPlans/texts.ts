/** Fixed texts about all plans of a model of three or more. */
export const allPlansTexts = {
  odds: 'Which plan is the best of all',
  costs: 'Costs in every plan',
  bestRegion: 'Which plan is the best where',
  linesRegion: 'The lines of all plans as numbers',
  oddsRegion: 'How often each plan is the best',
  costsRegion: 'Costs in every plan, side by side',
  plan: 'plan',
  often: 'best in, per cent of draws',
  mean: 'on average',
  none: 'none can be computed',
  together: 'together',
  least: 'least',
  noValue: '–',
  noCosts: 'The cost lines of the budget are not in one currency and rhythm, so they cannot be added up.',
  /** @param exact whether the places are exact rather than float64 */
  bestCaption: (word: string, exact: boolean) =>
    `Which plan has the ${word}${exact ? '' : ' (being worked out exactly …)'}`,
} as const;
