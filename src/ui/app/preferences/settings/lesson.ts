import { flag, wholeNumber, text, type Setting } from './setting';

/** Whether the results of a lesson are hidden until their step is opened. */
export const resultsHiddenSetting = flag('results hidden');

/** Indices of the steps whose answers have been opened. @param lesson its title */
export const openedStepsSetting = (lesson: string): Setting<readonly number[]> => ({
  key: `opened steps ${lesson}`,
  read: (kept) =>
    kept
      .split(' ')
      .filter((word) => /^\d+$/.test(word))
      .map(Number),
  write: (steps) => steps.join(' '),
});

/** The step that the class is at, by its index. */
export function classStepSetting(lesson: string): Setting<number> {
  return wholeNumber(`class step ${lesson}`, { least: 0, most: 9999 }, 0);
}

/** The guesses of a class for a step, as they are typed. */
export function guessesSetting(lesson: string, step: number): Setting<string> {
  return text(`guesses ${step} ${lesson}`);
}
