/** Words round what a case assumes. */
export const assumedTexts = {
  decisions: 'What the plans set differently',
  looking: 'Looking for the guesses that matter most …',
  noGuess: 'No entry with a range turns the answer by itself.',
  guesses: 'Guesses with a range, those first that turn the answer within it',
  /** @param from where the guess comes from */
  rangeFrom: (range: string, from: string) => `${range}; ${from}`,
} as const;
