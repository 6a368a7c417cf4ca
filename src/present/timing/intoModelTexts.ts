import { wording } from '../../language/wording';
import { say, type Phrase } from '../text/phrase';

/** Fixed texts of entering times into the model. */
export const intoModelTexts = {
  heading: wording`Into the model`,
  noInputOf: (plan: string) => wording`No input of ${plan} is a time for one plant or board, such as s/plant.`,
  noInput: wording`No input of this model is a time for one plant or board, such as s/plant.`,
  use: wording`Use the`,
  mean: wording`mean time`,
  standard: wording`standard time`,
  ownAllowance: wording`This model has an allowance of its own and lengthens every time by it: give it the mean, or rest counts twice.`,
  noAllowance: wording`This model has no entry for an allowance: the standard time brings rest and waiting with it.`,
  rangeExplained: wording`A range from here is where the mean of many batches may lie, not how far single batches do. Undo takes either back in one step.`,
  entryFor: (step: string) => wording`Entry for ${step}`,
  noEntry: wording`no entry`,
  /** Both numbers; the unit follows this text. */
  besideTimed: (today: string, timed: string): Phrase => say`In the model ${today}, timed ${timed}`,
  hasIt: wording`The model has it.`,
  useValue: (value: string) => wording`Use ${value}`,
  useWithRange: (low: string, high: string) => wording`Use it with its range ${low} to ${high}`,
} as const;

/**
 * Says that a plan has no input for a time.
 * @param plan its name, blank where the model has one unnamed plan
 */
export function noInputText(plan: string): string {
  return plan === '' ? intoModelTexts.noInput : intoModelTexts.noInputOf(plan);
}

/**
 * Says which time belongs in the model: the mean or the standard time.
 * @param own whether the model itself adds an allowance
 */
export function allowanceText(own: boolean): string {
  return own ? intoModelTexts.ownAllowance : intoModelTexts.noAllowance;
}
