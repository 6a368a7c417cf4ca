import { space } from '../text/numberFormat';

/** Fixed texts of opening, keeping and saving trials. */
export const trialsTexts = {
  question: 'How long does a plant take, and how sure is that?',
  howTo:
    'Time a few batches of a step, a board or two each, and count their plants: with the watch here, by hand, or from a file. A file has the columns step, plants and seconds, one row a batch; worker, rating, date, lost, way and note if you like.',
  open: 'Open trials (CSV)',
  loadInvented: 'Load invented trials',
  addOthers: 'Add trials of another phone (CSV)',
  /** @param added batches that were not there yet; @param there those that were */
  merged: (file: string, added: number, there: number) =>
    `${file}: ${added}${space}${added === 1 ? 'batch' : 'batches'} added, ${there === 0 ? 'none was' : there === 1 ? '1 was' : `${there} were`} there already.`,
  save: 'Save the trials (CSV)',
  takeOutAll: 'Take out all batches',
  isOpen: (file: string) => `${file} is open.`,
  inventedAreOpen: 'The invented trials of Tern Sluice are open.',
  allTakenOut: 'All batches were taken out.',
  refused: (file: string, why: string) => `${file}: ${why}`,
  /** Both numbers are in thousands of characters. */
  tooLarge: (size: number, most: number) =>
    `too many trials for this screen: ${size} kB, ${most} is the most. Nothing was changed; the command line takes them: npm run cli -- time FILE.`,
} as const;
