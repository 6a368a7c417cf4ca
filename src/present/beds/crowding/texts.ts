import { wording } from '../../../language/wording';
import type { CropNames } from '../stageNames';
import { plantsABoard } from '../names';

/** Words round what someone enters of leaves that touch, and of plants that are never moved. */
export const crowdingTexts = {
  heading: wording`When the leaves touch`,
  explanation: wording`Measure a few plants and enter what you find: sources disagree how fast leaves spread and what crowding costs. Where the model has entries for it, those count in the money; what you enter here does not.`,
  pattern: wording`Plants stand in`,
  square: wording`squares`,
  staggered: wording`staggered rows`,
  first: wording`spread at the start`,
  last: wording`spread of a free plant`,
  rate: wording`growth at first`,
  rateUnit: wording`% a day`,
  loss: wording`lost for each crowded day`,
  enterSpreads: wording`Enter the two spreads, the second the larger, and the growth.`,
  neverMoved: wording`Closer or wider, without a move`,
  firstTrial: wording`first trial at`,
  secondTrial: wording`second trial at`,
  places: plantsABoard,
  mass: wording`came to`,
  massUnit: ({ plant }: CropNames) => wording`g a ${plant.one}`,
  enterTrials: wording`Enter two trials at densities of their own.`,
} as const;
