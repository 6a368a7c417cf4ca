/** Words round the suggestions of what would finish more. */
export const suggestionTexts = {
  heading: 'What would help, each by itself',
  none: 'No other interval, density or half week that was tried finishes more.',
  tryIt: 'Try it',
  scope:
    'Counted is room only: what fewer days or more holes do to the plants, their price and the hours is not in it. Undo takes a try back.',
} as const;
