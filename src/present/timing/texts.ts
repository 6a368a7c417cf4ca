import { wording } from '../../language/wording';

/** Words of the screen of timed trials round its parts. */
export const timingTexts = {
  howFarOff: wording`How far the mean may lie off`,
  trials: wording`The trials`,
  care: wording`Before you time someone`,
  fairness: wording`Tell people that they are timed and why, and time them only if they agree. A rating is a judgement of one person’s pace by another: let both see it. Time whole batches with their rests and snags, not the best minute. The rules on watching people at work and on piece pay in your place decide.`,
} as const;

/** What its fields and the columns of its tables are called. */
export const timingFields = {
  step: wording`Step`,
  plants: wording`Plants`,
  secondsEach: wording`s each`,
} as const;
