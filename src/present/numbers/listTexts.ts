import { say, type Phrase } from '../text/phrase';
import type { Sieve } from './outline';

/** What the list of entries says: its heading, its sieves, and what stands where nothing does. */
export const listTexts = {
  heading: 'Numbers',
  pressALabel: 'Press a label to see where its number comes from and what it feeds.',
  allOfSample: 'Every figure here is a sample’s.',
  setUp: 'Set up my farm',
  find: 'Find an entry',
  onlyInputs: 'Only inputs',
  /** Where the sieve lets nothing through; the words looked for are the strong piece. */
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
  /** Of a group. */
  entries: (count: number) => (count === 1 ? 'one entry' : `${count} entries`),
  notAnEntry: 'not among the entries',
  plan: (letter: string) => `Plan ${letter}`,
  secondLessFirst: 'B − A',
} as const;
