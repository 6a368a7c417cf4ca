import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { agree, expectedOf, Shipped, written, type Changes, type Given, type Results } from '../models/shipped';

/**
 * `models/plug-media.csv` a second time: exact fractions, written from the trade's rules and not from the file's
 * formulas. A year is followed plug by plug: what is sown, bought, ordered, set, washed and thrown away is counted and
 * paid, and the cost of a plant is that year's cost shared out. A price that ties is found from two years that differ
 * in the price alone: the cost of a plant is a straight line in it.
 */
const media = new Shipped('plug-media');
const [foamPlan, peatPlan, holderPlan] = ['Foam cube', 'Peat plug', 'Holder with wick'];
const zero = new Fraction(0);
const one = new Fraction(1);

type Medium = 'foam' | 'peat' | 'holder';
const mediumOf: Readonly<Record<string, Medium>> = {
  'Foam cube': 'foam',
  'Peat plug': 'peat',
  'Holder with wick': 'holder',
};
const others: Readonly<Record<Medium, readonly [Medium, Medium]>> = {
  foam: ['peat', 'holder'],
  peat: ['foam', 'holder'],
  holder: ['foam', 'peat'],
};

/** How far a price may rise is a small difference of two numbers near 100 %. */
const near100 = { foam_room: 100, peat_room: 100, holder_room: 100 };

const total = (parts: readonly Fraction[]): Fraction => parts.reduce((sum, part) => sum.add(part), zero);
const smaller = (a: Fraction, b: Fraction): Fraction => (a.lt(b) ? a : b);
const larger = (a: Fraction, b: Fraction): Fraction => (a.gt(b) ? a : b);

/** Uses of a holder counted one by one: the n-th use comes if none of those before lost it. */
function usesOf(given: Given, medium: Medium): Fraction {
  if (medium !== 'holder') return one;
  const stays = one.sub(given('holder_loss').div(100));
  return total(Array.from({ length: given('holder_life').valueOf() }, (_, use) => stays.pow(use)));
}

function workCost(given: Given): Fraction {
  return given('wage').mul(given('on_cost').div(100).add(1)).mul(given('allowance').div(100).add(1));
}

/** A year with one medium: quantities, and what each of them costs. */
function yearOf(given: Given, medium: Medium) {
  const of = (what: string): Fraction => given(`${medium}_${what}`);
  const isHolder = medium === 'holder';
  const second = workCost(given).div(3600);
  const sown = given('finished_year').mul(given('plugs_per_plant')).mul(100).div(of('survival'));
  const uses = usesOf(given, medium);
  const bought = sown.div(uses);
  const off = bought.gte(of('break')) ? of('discount') : zero;
  const order = larger(of('minimum'), bought.div(given('orders_wanted')));
  const washings = sown.sub(bought);
  const paid = of('price').mul(new Fraction(100).sub(off)).div(100);
  const setting = sown.mul(of('setting'));
  const washing = isHolder ? washings.mul(of('washing')) : zero;
  const money = {
    plugs: bought.mul(paid),
    freight: bought.div(order).mul(of('freight')),
    disposal: bought.mul(of('disposal')),
    wicks: isHolder ? sown.mul(given('wick_price')) : zero,
    seed: sown.mul(given('seed_price')),
    setting: setting.mul(second),
    washing: washing.mul(second),
  };
  const cost = total(Object.values(money));
  return { sown, uses, bought, off, order, paid, seconds: setting.add(washing), money, cost };
}

function costOfPlant(given: Given, medium: Medium): Fraction {
  return yearOf(given, medium).cost.div(given('finished_year'));
}

/** The price at which a medium costs as much for a plant as the better of the other two. */
function tyingPrice(given: Given, medium: Medium): Fraction {
  const at = (price: Fraction) => costOfPlant((name) => (name === `${medium}_price` ? price : given(name)), medium);
  const target = smaller(...(others[medium].map((other) => costOfPlant(given, other)) as [Fraction, Fraction]));
  return target.sub(at(zero)).div(at(one).sub(at(zero)));
}

/** The cells of one medium, which are the same in every plan. */
function sideBySide(given: Given, medium: Medium): Results {
  const { sown, uses, bought, off, order, paid, money, cost } = yearOf(given, medium);
  const aPlug = (...parts: Fraction[]): Fraction => total(parts).div(sown);
  const ties = tyingPrice(given, medium);
  const cells = {
    sown,
    off,
    paid,
    order,
    material: aPlug(money.plugs, money.freight, money.disposal, money.wicks),
    hands: aPlug(money.setting, money.washing),
    cost: cost.div(given('finished_year')),
    ties,
    room: ties
      .div(given(`${medium}_price`))
      .sub(1)
      .mul(100),
    ...(medium === 'holder' && { uses, bought }),
  };
  return Object.fromEntries(Object.entries(cells).map(([name, value]) => [`${medium}_${name}`, value]));
}

function planCells(given: Given, medium: Medium, eachMayTie: boolean): Results {
  const { sown, bought, order, paid, seconds, money, cost } = yearOf(given, medium);
  const isHolder = medium === 'holder';
  const stock = isHolder ? sown.div(given('weeks_per_year')).mul(given('holder_turn')) : zero;
  const hours = seconds.div(3600).mul(given('allowance').div(100).add(1)).div(given('weeks_per_year'));
  const lasts = order.div(bought).mul(12);
  const aPlant = cost.div(given('finished_year'));
  return {
    plugs_year: money.plugs,
    freight_year: money.freight,
    disposal_year: money.disposal,
    wick_year: money.wicks,
    seed_year: money.seed,
    setting_year: money.setting,
    washing_year: money.washing,
    cost_year: cost,
    cost_per_plant: aPlant,
    hours_week: hours,
    order_lasts: lasts,
    start_stock: stock,
    start_money: isHolder ? stock.mul(paid) : zero,
    order_keeps: lasts.lte(given('longest_stock')),
    hands_enough: hours.lte(given('hours_most')),
    cost_allowed: aPlant.lte(given('most_per_plant')),
    each_may_tie: eachMayTie,
  };
}

function plugByPlug(given: Given, plan: string): Results {
  const each: Results = {
    ...sideBySide(given, 'foam'),
    ...sideBySide(given, 'peat'),
    ...sideBySide(given, 'holder'),
  };
  const eachMayTie = ['foam_ties', 'peat_ties', 'holder_ties'].every(
    (price) => (each[price] as Fraction).compare(0) > 0,
  );
  return { work_cost: workCost(given), ...each, ...planCells(given, mediumOf[plan]!, eachMayTie) };
}

describe.each(media.plans)('%s', (plan) => {
  test('every entry is worked out here', () => {
    const known = Object.keys(media.secondValues(plugByPlug, plan)).sort();
    expect(known).toEqual(media.model.cells.map(({ name }) => name).sort());
  });

  const differences = (changes: Changes = {}): string[] => media.differences(plugByPlug, plan, changes, near100);

  test('today', () => expect(differences()).toEqual([]));

  test('the reviewed figures', () => {
    const figures = expectedOf('plug-media')[plan]!;
    expect(written(new Map(Object.entries(media.secondValues(plugByPlug, plan))), figures)).toEqual(figures);
  });

  test.each(media.ranges())('%s at either end', (name, low, high) => {
    expect(differences({ [name]: low })).toEqual([]);
    expect(differences({ [name]: high })).toEqual([]);
  });

  test.each<[string, Changes]>([
    ['a year that reaches every discount', { finished_year: '300000' }],
    ['a year so small that each order is the smallest', { finished_year: '40000' }],
    ['two plugs for a place', { plugs_per_plant: '2' }],
    ['a holder that lasts for one use', { holder_life: '1' }],
    ['holders that are never lost', { holder_loss: '0' }],
  ])('%s', (_, changes) => expect(differences(changes)).toEqual([]));
});

describe('a price that ties', () => {
  test.each(['foam', 'peat', 'holder'] as const)(
    '%s: at it the plant costs what the best other one costs',
    (medium) => {
      const price = media.values(foamPlan).get(`${medium}_ties`) as Fraction;
      const values = media.values(foamPlan, { [`${medium}_price`]: price.toString(40) });
      const best = smaller(...(others[medium].map((other) => values.get(`${other}_cost`)) as [Fraction, Fraction]));
      expect(agree(values.get(`${medium}_cost`), best)).toBe(true);
    },
  );

  test('does not hang on the price that is asked', () => {
    const ties = ['0.2', '0.44', '2'].map((price) =>
      media.values(holderPlan, { holder_price: price }).get('holder_ties'),
    );
    expect(new Set(ties.map(String)).size).toBe(1);
  });

  test.each([
    ['a dearer hour', { wage: '15' }, { wage: '12.2' }],
    ['fewer uses', { holder_life: '25' }, { holder_life: '100' }],
    ['more losses', { holder_loss: '9' }, { holder_loss: '2.5' }],
  ])('%s brings that of the holder down', (_, against, inFavour) => {
    const [less, more] = [against, inFavour].map((changes) => media.values(holderPlan, changes).get('holder_ties'));
    expect((less as Fraction).lt(more as Fraction)).toBe(true);
  });
});

test('a plan pays for a plant what its plug costs side by side', () => {
  for (const plan of media.plans) {
    const values = media.values(plan);
    expect(agree(values.get('cost_per_plant'), values.get(`${mediumOf[plan]!}_cost`)!)).toBe(true);
  }
});

describe('checks', () => {
  test.each<[check: string, plan: string, changes: Changes]>([
    ['order_keeps', holderPlan, { holder_minimum: '8000' }],
    ['hands_enough', holderPlan, { hours_most: '6' }],
    ['cost_allowed', peatPlan, { peat_price: '0.06' }],
    ['each_may_tie', foamPlan, { wage: '60' }],
  ])('%s can fail', (check, plan, changes) => expect(media.failing(plan, changes)).toContain(check));
});
