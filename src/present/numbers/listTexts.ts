import { say, type Phrase } from '../text/phrase';
import type { Sieve } from './outline';
import { commonTexts } from '../text/commonTexts';
import { questionLabel } from '../page/questions';

/** Fixed texts of the list of entries: its heading, its filters, and what it says when it is empty. */
export const listTexts = {
  heading: questionLabel('numbers'),
  pressALabel: 'Press a label to see where its number comes from and what it feeds.',
  find: 'Find an entry',
  onlyInputs: 'Only inputs',
  /** Where no entry passes the filter; the words searched for stand out. */
  noneFound: ({ words, onlyInputs }: Sieve): Phrase =>
    onlyInputs
      ? say`No entry has ${words} in its label or name among the inputs.`
      : say`No entry has ${words} in its label or name.`,
  showAll: 'Show all entries',
  empty: {
    heading: 'No entries yet',
    whatAModelIs:
      'A model is a table: one row for each number, with a name, a label, a unit, and a number or a formula.',
    whatToDo: 'Open one of the models that come with Raftmargin, or drop a CSV file of your own anywhere on this page.',
  },
  /** The number of entries in a group. */
  entries: (count: number) => (count === 1 ? 'one entry' : `${count} entries`),
  notAnEntry: 'not among the entries',
  plan: (letter: string) => `Plan ${letter}`,
  secondLessFirst: commonTexts.secondLessFirst,
} as const;
