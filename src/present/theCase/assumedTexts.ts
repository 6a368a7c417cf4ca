import { wording } from '../../language/wording';

/** Words round what a case assumes. */
export const assumedTexts = {
  decisions: wording`What the plans set differently`,
  looking: wording`Looking for the guesses that matter most …`,
  noGuess: wording`No entry with a range turns the answer by itself.`,
  guesses: wording`Guesses with a range, those first that turn the answer within it`,
  /** @param from where the guess comes from */
  rangeFrom: (range: string, from: string) => `${range}; ${from}`,
} as const;
