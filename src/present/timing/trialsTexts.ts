import { wording } from '../../language/wording';

function addedText(added: number): string {
  return added === 1 ? wording`${added}\u00a0batch added` : wording`${added}\u00a0batches added`;
}

function thereText(there: number): string {
  if (there === 0) return wording`none was there already`;
  return there === 1 ? wording`1 was there already` : wording`${there} were there already`;
}

/** Fixed texts of opening, keeping and saving trials. */
export const trialsTexts = {
  question: wording`How long does a plant take, and how sure is that?`,
  howTo: wording`Time a few batches of a step, a board or two each, and count their plants: with the watch here, by hand, or from a file. A file has the columns step, plants and seconds, one row a batch; worker, rating, date, lost, way and note if you like.`,
  open: wording`Open trials (CSV)`,
  loadInvented: wording`Load invented trials`,
  addOthers: wording`Add trials of another phone (CSV)`,
  /** @param added batches that were not there yet; @param there those that were */
  merged: (file: string, added: number, there: number) => `${file}: ${addedText(added)}, ${thereText(there)}.`,
  save: wording`Save the trials (CSV)`,
  takeOutAll: wording`Take out all batches`,
  isOpen: (file: string) => wording`${file} is open.`,
  inventedAreOpen: wording`The invented trials of Tern Sluice are open.`,
  allTakenOut: wording`All batches were taken out.`,
  refused: (file: string, why: string) => `${file}: ${why}`,
  /** Both numbers are in thousands of characters. */
  tooLarge: (size: number, most: number) =>
    wording`too many trials for this screen: ${size} kB, ${most} is the most. Nothing was changed; the command line takes them: npm run cli -- time FILE.`,
} as const;
