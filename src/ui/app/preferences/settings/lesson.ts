import { flag, wholeNumber, text, type Setting } from './setting';

/** Whether the results of a lesson are hidden until their step is opened. */
export const resultsHiddenSetting = flag('results hidden');

/** Indices of the steps whose answers have been opened. */
export const openedStepsSetting: Setting<readonly number[]> = {
  key: 'opened steps',
  read: (kept) =>
    kept
      .split(' ')
      .filter((word) => /^\d+$/.test(word))
      .map(Number),
  write: (steps) => steps.join(' '),
};

/** The step that the class is at, by its index. */
export const classStepSetting = wholeNumber('class step', { least: 0, most: 9999 }, 0);

/** The guesses of a class for a step, as they are typed. */
export function guessesSetting(step: number): Setting<string> {
  return text(`guesses ${step}`);
}
