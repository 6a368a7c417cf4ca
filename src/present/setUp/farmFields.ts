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

const timesIn = (unit: TimeUnit): string => (unit === 'week' ? 'weeks' : 'days');

const field = (key: FigureKey, label: string, unit: string | FarmField['unit']): FarmField => ({
  key,
  label,
  unit: typeof unit === 'string' ? () => unit : unit,
});

const places: FarmAsk = {
  key: 'places',
  heading: 'How many boards can float at once?',
  reason: 'All places on the water, whatever stands on them: they are what you have to share out.',
  fields: [field('boards', 'Places for boards', 'boards')],
};

const holes: FarmAsk = {
  key: 'holes',
  heading: 'How many holes does a board have?',
  reason: 'A nursery board holds more plants, so the same water carries more of them while they are small.',
  fields: [
    field('finishingHoles', 'On a finishing board', 'holes'),
    field('nurseryHoles', 'On a nursery board', 'holes'),
    field('nurseryBoards', 'Nursery boards that are there or will be bought', 'boards'),
  ],
};

const times: FarmAsk = {
  key: 'times',
  heading: 'How long does a plant stand on the water?',
  reason: 'From set-out to harvest. A crop takes as long with a nursery as without one, or a little longer.',
  fields: [
    field('timeToday', 'Today, without a nursery', timesIn),
    field('nurseryTime', 'With one: in the nursery, up to the move', timesIn),
    field('finishingTime', 'With one: from the move to harvest', timesIn),
  ],
};

const rhythm: FarmAsk = {
  key: 'rhythm',
  heading: 'How often is a batch sown?',
  reason: 'Every batch fills boards of its own. Where the times are no multiple of the rhythm, boards wait empty.',
  fields: [field('interval', 'From one sowing to the next', 'days')],
};

const losses: FarmAsk = {
  key: 'losses',
  heading: 'How many plants are lost, and where?',
  reason: 'A plant that is lost late has held its place and taken the hands as long as one that is sold.',
  fields: [
    field('lostToday', 'Without a nursery: from set-out to harvest', '%'),
    field('lostAtMove', 'In the nursery and at the move', '%'),
    field('lostAfter', 'From the move to harvest', '%'),
  ],
};

const move: FarmAsk = {
  key: 'move',
  heading: 'How long does it take to move one plant?',
  reason: 'Lift it, carry it, set it, the weak ones thrown out on the way. It is what a nursery costs most.',
  fields: [field('moveSeconds', 'Seconds to move a plant', 'seconds')],
};

const free = field('freeHours', 'Free hours of the present staff, a week', 'hours');

const hands: Readonly<Record<'hire' | 'density', FarmAsk>> = {
  hire: {
    key: 'hands',
    heading: 'Who can do the moving?',
    reason:
      'Today’s setting, harvest, packing and washing are taken to be done by the present staff. A hire is paid only for what they cannot cover, or for what is promised.',
    fields: [free, field('guaranteedHours', 'Hours a week promised to a hire', 'hours')],
  },
  density: {
    key: 'hands',
    heading: 'Who can do the moving?',
    reason:
      'Today’s setting, harvest, packing and washing are taken to be done by the present staff. Only hours that they cannot cover cost more.',
    fields: [free],
  },
};

const wages: readonly FarmField[] = [
  field('wage', 'Wage', (_unit, money) => `${money} an hour`),
  field('onCost', 'On top of the wage: charges, paid leave', '%'),
];

const pay: FarmAsk = {
  key: 'pay',
  heading: 'What does an hour cost?',
  reason: 'The law of your place decides what an employer pays on top of the wage.',
  fields: wages,
};

const costs: FarmAsk = {
  key: 'costs',
  heading: 'What do an hour and the house cost?',
  reason:
    'The house with rent, heat, light, power, feed and your own pay costs the same in both plans: it moves the margin, not the difference.',
  fields: [...wages, field('houseYear', 'The house for a year', (_unit, money) => money)],
};

const selling: FarmAsk = {
  key: 'selling',
  heading: 'What does a head bring, and how many can you sell?',
  reason: 'More plants help only as long as someone buys them.',
  fields: [
    field('price', 'Price of a head', (_unit, money) => money),
    field('marketLimit', 'Heads a week that sell at that price', 'heads'),
    field('lowerPrice', 'Price of a head beyond that', (_unit, money) => money),
  ],
};

const year: FarmAsk = {
  key: 'year',
  heading: 'How many plants do you sell in a year?',
  reason: 'Sellers give discounts by the year, and freight is shared by all that one order holds.',
  fields: [field('plantsYear', 'Finished plants a year', 'plants')],
};

const plugHands: FarmAsk = {
  key: 'plug hands',
  heading: 'How many hours are there for setting and washing plugs?',
  reason: 'A plug that takes more hours than you have is no choice, however cheap it is.',
  fields: [field('plugHours', 'Hours a week', 'hours')],
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
      field(`foam${part}`, 'Foam cube', unit),
      field(`peat${part}`, 'Peat plug', unit),
      field(`holder${part}`, 'Holder with wick', unit),
    ],
  };
}

const plugAsks: readonly FarmAsk[] = [
  year,
  plugs(
    'plug prices',
    'What do the sellers ask?',
    'List price of one, before any discount.',
    'Price',
    (_u, money) => money,
  ),
  plugs(
    'plug seconds',
    'How long does it take to set one?',
    'Seconds are paid for every plug, also for those that fail.',
    'Seconds',
    'seconds',
  ),
  plugs(
    'plug losses',
    'How many fail before harvest?',
    'From the plug set to the head cut. A plug that fails is paid for all the same.',
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
