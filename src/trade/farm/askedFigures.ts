import type { FarmQuestion, FigureKey } from './answers';

/** How far a figure that is given may lie off; see `rangeOf`. */
export type RangeRule = 'decision' | 'measured' | 'time' | 'loss';

/** A figure that is asked for, and the entry of the template that holds it. */
export interface AskedFigure {
  readonly key: FigureKey;
  readonly entry: string;
  readonly rule: RangeRule;
}

const hands: readonly AskedFigure[] = [
  { key: 'wage', entry: 'wage', rule: 'measured' },
  { key: 'onCost', entry: 'on_cost', rule: 'measured' },
];

const growing: readonly AskedFigure[] = [
  { key: 'boards', entry: 'boards', rule: 'decision' },
  { key: 'finishingHoles', entry: 'finishing_density', rule: 'decision' },
  { key: 'nurseryHoles', entry: 'nursery_density', rule: 'decision' },
  { key: 'nurseryBoards', entry: 'nursery_boards_bought', rule: 'decision' },
  { key: 'timeToday', entry: 'finish_time_straight', rule: 'time' },
  { key: 'nurseryTime', entry: 'nursery_time', rule: 'decision' },
  { key: 'finishingTime', entry: 'finish_time_after_nursery', rule: 'time' },
  { key: 'interval', entry: 'interval', rule: 'decision' },
  { key: 'lostToday', entry: 'finish_survival_straight', rule: 'loss' },
  { key: 'lostAtMove', entry: 'nursery_survival', rule: 'loss' },
  { key: 'lostAfter', entry: 'finish_survival_after_nursery', rule: 'loss' },
  { key: 'moveSeconds', entry: 'transplant_time', rule: 'measured' },
  { key: 'freeHours', entry: 'staff_hours', rule: 'decision' },
  ...hands,
  { key: 'houseYear', entry: 'house_cost', rule: 'measured' },
  { key: 'price', entry: 'price', rule: 'measured' },
  { key: 'marketLimit', entry: 'market_limit', rule: 'measured' },
  { key: 'lowerPrice', entry: 'lower_price', rule: 'measured' },
];

function ofPlug(plug: 'foam' | 'peat' | 'holder'): AskedFigure[] {
  return [
    { key: `${plug}Price`, entry: `${plug}_price`, rule: 'measured' },
    { key: `${plug}Seconds`, entry: `${plug}_setting`, rule: 'measured' },
    { key: `${plug}Lost`, entry: `${plug}_survival`, rule: 'loss' },
  ];
}

/** The figures that a question's model is made from and that are asked for. */
export const askedFigures: Readonly<Record<FarmQuestion, readonly AskedFigure[]>> = {
  hire: [...growing, { key: 'guaranteedHours', entry: 'guaranteed_hours', rule: 'decision' }],
  density: growing,
  plug: [
    { key: 'plantsYear', entry: 'finished_year', rule: 'measured' },
    ...hands,
    { key: 'plugHours', entry: 'hours_most', rule: 'decision' },
    ...ofPlug('foam'),
    ...ofPlug('peat'),
    ...ofPlug('holder'),
  ],
};
