import { boardsOf, type CropNames } from '../stageNames';

/** Words of a year from an empty bed, its picture and its weeks. */
export const yearTexts = {
  heading: 'The year from an empty bed',
  start: 'First day, the bed empty',
  numbers: 'Harvest and hours by week',
  picture: 'Boards in use, day by day',
  /** @param stage its index */
  band: (names: CropNames, stage: number) => `${stage + 1} ${boardsOf(names, stage).many}`,
  limit: ({ board }: CropNames) => `${board.many} there are`,
  overFull: 'over-full',
  table: 'Table of the weeks',
  week: 'week from',
  finished: ({ plant }: CropNames) => `finished ${plant.many}`,
  most: ({ board }: CropNames) => `most ${board.many} in use`,
  overFullDays: 'over-full days',
  needed: 'hours needed',
  paid: 'paid to a hire',
  idle: 'of these idle',
  overtime: 'of these overtime',
  year: 'year',
} as const;
