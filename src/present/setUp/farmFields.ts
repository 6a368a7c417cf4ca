import { wording } from '../../language/wording';
import type { FarmQuestion, FigureKey, TimeUnit } from '../../trade/farm/answers';

/** A field that takes one number. */
export interface FarmField {
  readonly key: FigureKey;
  readonly label: string;
  /** @param unit in what times on the water are counted; @param money the currency's code */
  readonly unit: (unit: TimeUnit, money: string) => string;
}

/** A question of the page: what is asked, why, and the fields for it. */
export interface FarmAsk {
  readonly key: string;
  readonly heading: string;
  readonly reason: string;
  readonly fields: readonly FarmField[];
}

/** What a field counts, behind it. */
const unitWords = {
  boards: wording`boards`,
  holes: wording`holes`,
  days: wording`days`,
  weeks: wording`weeks`,
  seconds: wording`seconds`,
  hours: wording`hours`,
  heads: wording`heads`,
  plants: wording`plants`,
} as const;

const timesIn = (unit: TimeUnit): string => (unit === 'week' ? unitWords.weeks : unitWords.days);

const field = (key: FigureKey, label: string, unit: string | FarmField['unit']): FarmField => ({
  key,
  label,
  unit: typeof unit === 'string' ? () => unit : unit,
});

const places: FarmAsk = {
  key: 'places',
  heading: wording`How many boards can float at once?`,
  reason: wording`All places on the water, whatever stands on them: they are what you have to share out.`,
  fields: [field('boards', wording`Places for boards`, unitWords.boards)],
};

const holes: FarmAsk = {
  key: 'holes',
  heading: wording`How many holes does a board have?`,
  reason: wording`A nursery board holds more plants, so the same water carries more of them while they are small.`,
  fields: [
    field('finishingHoles', wording`On a finishing board`, unitWords.holes),
    field('nurseryHoles', wording`On a nursery board`, unitWords.holes),
    field('nurseryBoards', wording`Nursery boards that are there or will be bought`, unitWords.boards),
  ],
};

const times: FarmAsk = {
  key: 'times',
  heading: wording`How long does a plant stand on the water?`,
  reason: wording`From set-out to harvest. A crop takes as long with a nursery as without one, or a little longer.`,
  fields: [
    field('timeToday', wording`Today, without a nursery`, timesIn),
    field('nurseryTime', wording`With one: in the nursery, up to the move`, timesIn),
    field('finishingTime', wording`With one: from the move to harvest`, timesIn),
  ],
};

const rhythm: FarmAsk = {
  key: 'rhythm',
  heading: wording`How often is a batch sown?`,
  reason: wording`Every batch fills boards of its own. Where the times are no multiple of the rhythm, boards wait empty.`,
  fields: [field('interval', wording`From one sowing to the next`, unitWords.days)],
};

const losses: FarmAsk = {
  key: 'losses',
  heading: wording`How many plants are lost, and where?`,
  reason: wording`A plant that is lost late has held its place and taken the hands as long as one that is sold.`,
  fields: [
    field('lostToday', wording`Without a nursery: from set-out to harvest`, '%'),
    field('lostAtMove', wording`In the nursery and at the move`, '%'),
    field('lostAfter', wording`From the move to harvest`, '%'),
  ],
};

const move: FarmAsk = {
  key: 'move',
  heading: wording`How long does it take to move one plant?`,
  reason: wording`Lift it, carry it, set it, the weak ones thrown out on the way. It is what a nursery costs most.`,
  fields: [field('moveSeconds', wording`Seconds to move a plant`, unitWords.seconds)],
};

const free = field('freeHours', wording`Free hours of the present staff, a week`, unitWords.hours);

const hands: Readonly<Record<'hire' | 'density', FarmAsk>> = {
  hire: {
    key: 'hands',
    heading: wording`Who can do the moving?`,
    reason: wording`Today’s setting, harvest, packing and washing are taken to be done by the present staff. A hire is paid only for what they cannot cover, or for what is promised.`,
    fields: [free, field('guaranteedHours', wording`Hours a week promised to a hire`, unitWords.hours)],
  },
  density: {
    key: 'hands',
    heading: wording`Who can do the moving?`,
    reason: wording`Today’s setting, harvest, packing and washing are taken to be done by the present staff. Only hours that they cannot cover cost more.`,
    fields: [free],
  },
};

const wages: readonly FarmField[] = [
  field('wage', wording`Wage`, (_unit, money) => wording`${money} an hour`),
  field('onCost', wording`On top of the wage: charges, paid leave`, '%'),
];

const pay: FarmAsk = {
  key: 'pay',
  heading: wording`What does an hour cost?`,
  reason: wording`The law of your place decides what an employer pays on top of the wage.`,
  fields: wages,
};

const costs: FarmAsk = {
  key: 'costs',
  heading: wording`What do an hour and the house cost?`,
  reason: wording`The house with rent, heat, light, power, feed and your own pay costs the same in both plans: it moves the margin, not the difference.`,
  fields: [...wages, field('houseYear', wording`The house for a year`, (_unit, money) => money)],
};

const selling: FarmAsk = {
  key: 'selling',
  heading: wording`What does a head bring, and how many can you sell?`,
  reason: wording`More plants help only as long as someone buys them.`,
  fields: [
    field('price', wording`Price of a head`, (_unit, money) => money),
    field('marketLimit', wording`Heads a week that sell at that price`, unitWords.heads),
    field('lowerPrice', wording`Price of a head beyond that`, (_unit, money) => money),
  ],
};

const year: FarmAsk = {
  key: 'year',
  heading: wording`How many plants do you sell in a year?`,
  reason: wording`Sellers give discounts by the year, and freight is shared by all that one order holds.`,
  fields: [field('plantsYear', wording`Finished plants a year`, unitWords.plants)],
};

const plugHands: FarmAsk = {
  key: 'plug hands',
  heading: wording`How many hours are there for setting and washing plugs?`,
  reason: wording`A plug that takes more hours than you have is no choice, however cheap it is.`,
  fields: [field('plugHours', wording`Hours a week`, unitWords.hours)],
};

function plugs(
  key: string,
  heading: string,
  reason: string,
  part: 'Price' | 'Seconds' | 'Lost',
  unit: FarmField['unit'] | string,
): FarmAsk {
  return {
    key,
    heading,
    reason,
    fields: [
      field(`foam${part}`, wording`Foam cube`, unit),
      field(`peat${part}`, wording`Peat plug`, unit),
      field(`holder${part}`, wording`Holder with wick`, unit),
    ],
  };
}

const plugAsks: readonly FarmAsk[] = [
  year,
  plugs(
    'plug prices',
    wording`What do the sellers ask?`,
    wording`List price of one, before any discount.`,
    'Price',
    (_u, money) => money,
  ),
  plugs(
    'plug seconds',
    wording`How long does it take to set one?`,
    wording`Seconds are paid for every plug, also for those that fail.`,
    'Seconds',
    unitWords.seconds,
  ),
  plugs(
    'plug losses',
    wording`How many fail before harvest?`,
    wording`From the plug set to the head cut. A plug that fails is paid for all the same.`,
    'Lost',
    '%',
  ),
  pay,
  plugHands,
];

/** The numbers that are asked for, in the order of the page. */
export function asksOf(question: FarmQuestion): readonly FarmAsk[] {
  if (question === 'plug') return plugAsks;
  return [places, holes, times, rhythm, losses, move, hands[question], costs, selling];
}
