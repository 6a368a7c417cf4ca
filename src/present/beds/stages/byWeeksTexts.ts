import { wording } from '../../../language/wording';
import type { CropNames } from '../stageNames';
import { plantsAWeek } from '../names';

/** Words on sharing boards by weeks; each speaks of a crop's own plants and boards. */
export const byWeeksTexts = {
  heading: ({ board }: CropNames) => wording`Why not share ${board.many} by weeks?`,
  reason: ({ plant, board }: CropNames) =>
    wording`A crowded ${board.one} carries more ${plant.many}, so the crowded weeks need fewer ${board.many} than their share of the time. Share them by ${plant.many} entering × days ÷ ${plant.many} a ${board.one}.`,
  table: ({ board }: CropNames) => wording`Table of ways to share the ${board.many}`,
  shared: ({ board }: CropNames) => wording`${board.many} shared`,
  finished: plantsAWeek,
  gain: wording`gain`,
} as const;
