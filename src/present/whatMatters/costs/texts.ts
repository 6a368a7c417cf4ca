import { commonTexts } from '../../text/commonTexts';

/** What stands around results side by side and in their tables. */
export const costsTexts = {
  which: 'which',
  noMore: (most: number) => `No more than ${most} can be told apart: leave one out to add another.`,
  moves: 'as this moves',
  tables: 'The same lines as tables',
  changesRegion: 'Where it changes',
  rowsRegion: 'The lines as numbers, side by side',
} as const;

/** In which unit the lines are, and in which plan: `EUR/plant, in Nursery first`; blanks are left out. */
export function costsCaption(unit: string, plan: string): string {
  return [unit, plan].filter(Boolean).join(', in ');
}

/** What the figures of the key are: `today, EUR/plant`. */
export function costsFigures(unit: string): string {
  return [commonTexts.today, unit].filter(Boolean).join(', ');
}

/**
 * Above the table of where another one becomes the lowest.
 * @param word what the lowest is called
 * @param exact whether its numbers are exact rather than float64
 */
export function changesCaption(word: string, input: string, exact: boolean): string {
  return `Which is ${word}, by ${input}${exact ? '' : ' (being worked out exactly …)'}`;
}
