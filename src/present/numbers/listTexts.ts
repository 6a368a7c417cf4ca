import { wording } from '../../language/wording';
import { say, type Phrase } from '../text/phrase';
import type { Sieve } from './outline';
import { commonTexts } from '../text/commonTexts';
import { questionLabel } from '../page/questions';

/** Fixed texts of the list of entries: its heading, its filters, and what it says when it is empty. */
export const listTexts = {
  heading: questionLabel('numbers'),
  pressALabel: wording`Press a label to see where its number comes from and what it feeds.`,
  allOfSample: wording`Every figure here is a sample’s.`,
  setUp: wording`Set up my farm`,
  find: wording`Find an entry`,
  onlyInputs: wording`Only inputs`,
  /** Where no entry passes the filter; the words searched for stand out. */
  noneFound: ({ words, onlyInputs }: Sieve): Phrase =>
    onlyInputs
      ? say`No entry has ${words} in its label or name among the inputs.`
      : say`No entry has ${words} in its label or name.`,
  showAll: wording`Show all entries`,
  empty: {
    heading: wording`No entries yet`,
    whatAModelIs: wording`A model is a table: one row for each number, with a name, a label, a unit, and a number or a formula.`,
    whatToDo: wording`Open one of the models that come with Raftmargin, or drop a CSV file of your own anywhere on this page.`,
  },
  /** The number of entries in a group. */
  entries: (count: number) => (count === 1 ? wording`one entry` : wording`${count} entries`),
  notAnEntry: wording`not among the entries`,
  plan: (letter: string) => wording`Plan ${letter}`,
  secondLessFirst: commonTexts.secondLessFirst,
} as const;
