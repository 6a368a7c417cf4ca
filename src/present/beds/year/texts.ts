import { wording } from '../../../language/wording';
import { boardsOf, type CropNames } from '../stageNames';

/** Words of a year from an empty bed, its picture and its weeks. */
export const yearTexts = {
  heading: wording`The year from an empty bed`,
  start: wording`First day, the bed empty`,
  numbers: wording`Harvest and hours by week`,
  picture: wording`Boards in use, day by day`,
  /** @param stage its index */
  band: (names: CropNames, stage: number) => `${stage + 1} ${boardsOf(names, stage).many}`,
  limit: ({ board }: CropNames) => wording`${board.many} there are`,
  overFull: wording`over-full`,
  table: wording`Table of the weeks`,
  week: wording`week from`,
  finished: ({ plant }: CropNames) => wording`finished ${plant.many}`,
  most: ({ board }: CropNames) => wording`most ${board.many} in use`,
  overFullDays: wording`over-full days`,
  needed: wording`hours needed`,
  paid: wording`paid to a hire`,
  idle: wording`of these idle`,
  overtime: wording`of these overtime`,
  weeks: (count: number) => wording`${count} weeks`,
} as const;
