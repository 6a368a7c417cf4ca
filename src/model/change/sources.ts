import { wording } from '../../language/wording';

/** What a person has said of a figure's source. */
export type Standing = 'entered' | 'timed' | 'confirmed' | 'guess' | 'invented' | 'other' | 'none';

const dayText = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });

/** Sources as the column `source` holds them; files are in English whatever the screen shows. */
export const ownSources = {
  entered: (day: Date): string => wording`entered ${dayText.format(day)}`,
  timed: (batches: number, day: Date): string =>
    wording`timed: ${batches === 1 ? wording`1 batch` : wording`${batches} batches`}, ${dayText.format(day)}`,
  confirmed: (day: Date): string => wording`confirmed ${dayText.format(day)}`,
  guess: (day: Date): string => wording`own guess, ${dayText.format(day)}`,
};

const marks: readonly (readonly [RegExp, Standing])[] = [
  [/^entered \d/, 'entered'],
  [/^timed: \d/, 'timed'],
  [/^confirmed \d/, 'confirmed'],
  [/^own guess, \d/, 'guess'],
  [/\binvent/i, 'invented'],
  [/./s, 'other'],
];

/** Where a figure comes from, by its source's text. */
export function standingOf(source: string): Standing {
  return marks.find(([mark]) => mark.test(source.trim()))?.[1] ?? 'none';
}

/** Whether the person whose model it is has given the figure, or said that it is theirs or a guess of theirs. */
export function isOwn(standing: Standing): boolean {
  return ['entered', 'timed', 'confirmed', 'guess'].includes(standing);
}
