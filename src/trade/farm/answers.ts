import type { Decimal } from '../../core/number';
import type { System } from '../../model/change/measures';

/** What a farm's model is to answer. */
export const farmQuestions = ['hire', 'density', 'plug'] as const;
export type FarmQuestion = (typeof farmQuestions)[number];

/** Figures that are asked for, by what they are. */
export type FigureKey =
  | 'boards'
  | 'finishingHoles'
  | 'nurseryHoles'
  | 'nurseryBoards'
  | 'timeToday'
  | 'nurseryTime'
  | 'finishingTime'
  | 'interval'
  | 'lostToday'
  | 'lostAtMove'
  | 'lostAfter'
  | 'moveSeconds'
  | 'freeHours'
  | 'guaranteedHours'
  | 'wage'
  | 'onCost'
  | 'houseYear'
  | 'price'
  | 'marketLimit'
  | 'lowerPrice'
  | 'plantsYear'
  | 'plugHours'
  | 'foamPrice'
  | 'foamSeconds'
  | 'foamLost'
  | 'peatPrice'
  | 'peatSeconds'
  | 'peatLost'
  | 'holderPrice'
  | 'holderSeconds'
  | 'holderLost';

/** In what a grower counts the time on the water. */
export const timeUnits = ['day', 'week'] as const;
export type TimeUnit = (typeof timeUnits)[number];

/** What a grower has said of a farm; what is undefined or absent was skipped. */
export interface FarmAnswers {
  readonly question: FarmQuestion;
  readonly name: string | undefined;
  /** An ISO 4217 code. */
  readonly currency: string | undefined;
  readonly system: System | undefined;
  readonly timeUnit: TimeUnit;
  /**
   * Times on the water in `timeUnit`, the interval in days, losses and the on-cost in per cent, seconds a plant or
   * plug, hours a week (free ones are those beside today's work), money in the currency. A market limit of 0 is none.
   */
  readonly figures: ReadonlyMap<FigureKey, Decimal>;
  /** Where figures come from that were not entered by hand, as the column `source` says it. */
  readonly sources?: ReadonlyMap<FigureKey, string>;
}
