import { say, type Phrase } from '../text/phrase';

/** Words on putting times into the model. */
export const intoModelTexts = {
  heading: 'Into the model',
  noInputOf: (plan: string) => `No input of ${plan} is a time for one plant or board, such as s/plant.`,
  noInput: 'No input of this model is a time for one plant or board, such as s/plant.',
  use: 'Use the',
  mean: 'mean time',
  standard: 'standard time',
  ownAllowance:
    'This model has an allowance of its own and lengthens every time by it: give it the mean, or rest counts twice.',
  noAllowance: 'This model has no entry for an allowance: the standard time brings rest and waiting with it.',
  rangeExplained:
    'A range from here is where the mean of many batches may lie, not how far single batches do. Undo takes either back in one step.',
  entryFor: (step: string) => `Entry for ${step}`,
  noEntry: 'no entry',
  /** The unit of both follows. */
  besideTimed: (today: string, timed: string): Phrase => say`In the model ${today}, timed ${timed}`,
  hasIt: 'The model has it.',
  useValue: (value: string) => `Use ${value}`,
  useWithRange: (low: string, high: string) => `Use it with its range ${low} to ${high}`,
} as const;

/**
 * That a plan has no input for a time.
 * @param plan its name, blank where the model has one plan without any
 */
export function noInputText(plan: string): string {
  return plan === '' ? intoModelTexts.noInput : intoModelTexts.noInputOf(plan);
}

/**
 * Which time belongs into a model.
 * @param own whether it lengthens its times itself
 */
export function allowanceText(own: boolean): string {
  return own ? intoModelTexts.ownAllowance : intoModelTexts.noAllowance;
}
