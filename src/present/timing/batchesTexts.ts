/** Fixed texts of the table of batches. */
export const batchesTexts = {
  heading: (step: string) => `Batches of ${step}`,
  /** @param batches the number with its noun, `8 batches` */
  showMore: (batches: string) => `Show ${batches} more`,
  add: 'Add a batch',
  fewerFields: 'Fewer fields',
  explained:
    'Rating: the worker’s pace in per cent, 100 is normal; blank counts as 100. Lost: plants lost or culled in the step; blank is not counted. Way: the way of working, to compare two. A batch that cannot be read is kept and left out.',
  number: 'number',
  takeOut: 'take out',
  takeOutBatch: (number: number) => `Take out batch ${number}`,
  fieldOf: (column: string, number: number) => `${column}, batch ${number}`,
  nowOf: (step: string) => `The batch is now one of ${step}.`,
  takenOut: 'A batch was taken out.',
  takenOutOf: (plants: string) => `The batch of ${plants} plants was taken out.`,
} as const;

/**
 * Says that a batch was removed.
 * @param plants as they stood in its field, maybe blank
 */
export function takenOutText(plants: string): string {
  return plants === '' ? batchesTexts.takenOut : batchesTexts.takenOutOf(plants);
}
