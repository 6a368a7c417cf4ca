import type { CropNames } from '../../../trade/stageNames';

/** Words on what whole boards cost. */
export const roundingTexts = {
  heading: 'What rounding costs',
  table: 'Table of what rounding costs',
  where: 'where',
  boards: ({ board }: CropNames) => `${board.many}, on average`,
  plants: ({ plant }: CropNames) => `${plant.many} a week`,
} as const;
