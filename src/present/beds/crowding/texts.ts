import type { CropNames } from '../stageNames';
import { plantsABoard } from '../names';

/** Words round what someone enters of leaves that touch, and of plants that are never moved. */
export const crowdingTexts = {
  heading: 'When the leaves touch',
  explanation:
    'Measure a few plants and enter what you find: sources disagree how fast leaves spread and what crowding costs. Where the model has entries for it, those count in the money; what you enter here does not.',
  pattern: 'Plants stand in',
  square: 'squares',
  staggered: 'staggered rows',
  first: 'spread at the start',
  last: 'spread of a free plant',
  rate: 'growth at first',
  rateUnit: '% a day',
  loss: 'lost for each crowded day',
  enterSpreads: 'Enter the two spreads, the second the larger, and the growth.',
  neverMoved: 'Closer or wider, without a move',
  firstTrial: 'first trial at',
  secondTrial: 'second trial at',
  places: plantsABoard,
  mass: 'came to',
  massUnit: ({ plant }: CropNames) => `g a ${plant.one}`,
  enterTrials: 'Enter two trials at densities of their own.',
} as const;
