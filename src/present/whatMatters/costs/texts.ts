import { wording, wordingOf } from '../../../language/wording';
import { commonTexts } from '../../text/commonTexts';

/** Fixed texts of results side by side and of their tables. */
export const costsTexts = {
  which: wording`which`,
  cheapest: wording`cheapest`,
  lowest: wordingOf('of results beside one another')`lowest`,
  noMore: (most: number) => wording`No more than ${most} can be told apart: leave one out to add another.`,
  moves: wording`as this moves`,
  tables: wording`The same lines as tables`,
  from: wordingOf('of an interval')`from`,
  to: wordingOf('of an interval')`to`,
  changesRegion: wording`Where it changes`,
  rowsRegion: wording`The lines as numbers, side by side`,
} as const;

/** The unit of the lines and their plan: `EUR/plant, in Nursery first`; a blank part is left out. */
export function costsCaption(unit: string, plan: string): string {
  return plan === '' || unit === '' ? unit + plan : wording`${unit}, in ${plan}`;
}

/** What the figures of the key are: `today, EUR/plant`. */
export function costsFigures(unit: string): string {
  return [commonTexts.today, unit].filter(Boolean).join(', ');
}

/**
 * The caption of the table of where another result becomes the lowest.
 * @param word the word for the lowest
 * @param exact whether its numbers are exact rather than float64
 */
export function changesCaption(word: string, input: string, exact: boolean): string {
  return exact
    ? wording`Which is ${word}, by ${input}`
    : wording`Which is ${word}, by ${input} (being worked out exactly …)`;
}
