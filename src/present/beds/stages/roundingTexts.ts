import type { CropNames } from '../stageNames';
import { plantsAWeek } from '../names';

/** Words on what whole boards cost. */
export const roundingTexts = {
  heading: 'What rounding costs',
  table: 'Table of what rounding costs',
  where: 'where',
  boards: ({ board }: CropNames) => `${board.many}, on average`,
  plants: plantsAWeek,
} as const;
