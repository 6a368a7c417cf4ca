import { wording } from '../../language/wording';

/** Fixed texts of the table of batches. */
export const batchesTexts = {
  heading: (step: string) => wording`Batches of ${step}`,
  /** @param batches the number with its noun, `8 batches` */
  showMore: (batches: string) => wording`Show ${batches} more`,
  add: wording`Add a batch`,
  fewerFields: wording`Fewer fields`,
  explained: wording`Rating: the worker’s pace in per cent, 100 is normal; blank counts as 100. Lost: plants lost or culled in the step; blank is not counted. Way: the way of working, to compare two. A batch that cannot be read is kept and left out.`,
  number: wording`number`,
  takeOut: wording`take out`,
  takeOutBatch: (number: number) => wording`Take out batch ${number}`,
  fieldOf: (column: string, number: number) => wording`${column}, batch ${number}`,
  nowOf: (step: string) => wording`The batch is now one of ${step}.`,
  takenOut: wording`A batch was taken out.`,
  takenOutOf: (plants: string) => wording`The batch of ${plants} plants was taken out.`,
} as const;

/**
 * Says that a batch was removed.
 * @param plants as they stood in its field, maybe blank
 */
export function takenOutText(plants: string): string {
  return plants === '' ? batchesTexts.takenOut : batchesTexts.takenOutOf(plants);
}
