import { wording } from '../../../language/wording';
import type { CropNames } from '../stageNames';
import { plantsAWeek } from '../names';

/** Words on what whole boards cost. */
export const roundingTexts = {
  heading: wording`What rounding costs`,
  table: wording`Table of what rounding costs`,
  where: wording`where`,
  boards: ({ board }: CropNames) => wording`${board.many}, on average`,
  plants: plantsAWeek,
} as const;
