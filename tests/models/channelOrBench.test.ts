import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  averageStanding,
  entering,
  mostStanding,
  searchedOnce,
  standing,
  wholeBoards,
  type Stage,
} from '../reference/batchesOnBoards.oracle';
import { expectedOf, rounded, Shipped, written, type Changes, type Given, type Results } from './shipped';

/**
 * `models/channel-or-bench.csv` a second time: exact fractions, written from the trade's rules and not from the file's
 * formulas. Benches in use are counted in a house that is filled potting by potting. By hand, for 640 pots a week:
 *   Spaced from the start: 640/0.95 = 673.7, so 674 pots on 674/144 -> 5 benches x 10 weeks = 50 benches;
 *     space a year 50 x 100 x 0.30 x 50 = 75,000 USD.
 *   Pot to pot first: 640/(0.985 x 0.95) = 683.9, so 684 pots on 684/400 -> 2 benches x 3 weeks; then 684 x 0.985 =
 *     673.7, so 674 pots on 5 benches x 7.5 weeks: 6 + 37.5 = 43.5 benches; space 65,250 USD.
 *     Spacing: 674 x 18 s x 1.12 = 3.7744 h a week x 50 x 20 USD = 3,774.40 USD.
 */
const nursery = new Shipped('channel-or-bench');
const [straight, tightFirst] = ['Spaced from the start', 'Pot to pot first'];
const zero = new Fraction(0);
const daysPerWeek = 7;
const total = (parts: readonly Fraction[]): Fraction => parts.reduce((sum, part) => sum.add(part), zero);

function cropOf(given: Given, plan: string) {
  const isTight = plan === tightFirst;
  return {
    tight_density: given('bench_area').mul(144).div(given('tight_space')),
    final_density: given('bench_area').mul(144).div(given('final_space')),
    final_time: given(isTight ? 'final_time_after' : 'final_time_straight'),
    ...(isTight && { tight_time: given('tight_weeks'), tight_survival: given('spacing_kept') }),
  };
}

function stagesOf(given: Given, plan: string): Stage[] {
  const crop = cropOf(given, plan);
  const spaced = {
    days: crop.final_time.mul(daysPerWeek),
    density: crop.final_density,
    kept: given('final_survival').div(100),
  };
  if (plan === straight) return [spaced];
  const days = given('tight_weeks').mul(daysPerWeek);
  return [{ days, density: crop.tight_density, kept: given('spacing_kept').div(100) }, spaced];
}

/** The fewest pots of which as many are sold as each potting's share of the order. */
function fewestStarted(given: Given, stages: readonly Stage[]): number {
  const wanted = given('order_week').mul(given('interval'));
  let started = wanted.floor().valueOf();
  const sold = (pots: number) => stages.reduce((alive, { kept }) => alive.mul(kept), new Fraction(pots));
  while (sold(started).lt(wanted)) started += 1;
  return started;
}

function benchesOf(given: Given, plan: string, started: number) {
  const stages = stagesOf(given, plan);
  const history = standing(stages, given('interval').mul(daysPerWeek));
  const each = wholeBoards(stages, started);
  return {
    tight_benches: new Fraction(plan === straight ? 0 : each[0]!),
    final_benches: new Fraction(each.at(-1)!),
    benches_used: total(averageStanding(history).map((n, i) => n.mul(each[i]!))),
    benches_most: new Fraction(mostStanding(history).reduce((sum, n, i) => sum + n * each[i]!, 0)),
  };
}

/** What all the benches could carry. */
function capacityOf(given: Given, plan: string) {
  const stages = stagesOf(given, plan);
  const starts = entering(stages, new Fraction(1));
  const kept = stages.reduce((alive, stage) => alive.mul(stage.kept), new Fraction(1));
  const benchDays = total(stages.map(({ days, density }, i) => starts[i]!.mul(days).div(density)));
  return {
    most_started: new Fraction(searchedOnce(stages, given('interval').mul(daysPerWeek), given('benches'))),
    bench_weeks_per_pot: benchDays.div(daysPerWeek).div(kept),
    balanced_week: given('benches').mul(kept).div(benchDays).mul(daysPerWeek),
  };
}

function hoursOf(given: Given, plan: string, started: Fraction, spaced: Fraction) {
  const paid = (step: string, aWeek: Fraction): Fraction =>
    given(step).mul(aWeek).mul(given('allowance').div(100).add(1)).div(3600);
  const hours = {
    potting_hours: paid('potting_time', started.div(given('interval'))),
    spacing_hours: plan === straight ? zero : paid('spacing_time', spaced.div(given('interval'))),
    selling_hours: paid('selling_time', given('order_week')),
  };
  return { ...hours, hours_week: total(Object.values(hours)) };
}

function moneyOf(given: Given, started: Fraction, hours: ReturnType<typeof hoursOf>, benches: Fraction) {
  const weeks = given('weeks_per_year');
  const sold = given('order_week').mul(weeks);
  const aPotStarted = given('cutting_price').add(given('pot_price')).add(given('feed_price'));
  const wages = (aWeek: Fraction): Fraction => aWeek.mul(weeks).mul(given('hour_cost'));
  const spent = {
    young_year: started.div(given('interval')).mul(weeks).mul(aPotStarted),
    sleeve_year: sold.mul(given('sleeve_price')),
    hands_year: wages(hours.potting_hours.add(hours.selling_hours)),
    spacing_year: wages(hours.spacing_hours),
    space_year: benches.mul(given('bench_area')).mul(given('space_rate')).mul(weeks),
  };
  const costs = total(Object.values(spent));
  return {
    ...spent,
    sales_year: sold.mul(given('price')),
    margin: sold.mul(given('price')).sub(costs),
    space_per_pot: spent.space_year.div(sold),
    cost_per_pot: costs.div(sold),
  };
}

function pottingByPotting(given: Given, plan: string): Results {
  const stages = stagesOf(given, plan);
  const started = new Fraction(fewestStarted(given, stages));
  const spaced = entering(stages, started).at(-1)!.ceil();
  const benches = benchesOf(given, plan, started.valueOf());
  const capacity = capacityOf(given, plan);
  const hours = hoursOf(given, plan, started, spaced);
  const money = moneyOf(given, started, hours, benches.benches_used);
  const used = given('benches').mul(given('bench_area')).mul(given('bench_use')).div(100);
  const ownRate = given('house_cost').div(used).div(given('house_weeks'));
  return {
    ...cropOf(given, plan),
    started,
    spaced,
    ...benches,
    ...capacity,
    ...hours,
    ...money,
    own_rate: ownRate,
    benches_enough: started.lte(capacity.most_started),
    hands_enough: hours.hours_week.lte(given('hours_most')),
    rate_covers_house: given('space_rate').gte(ownRate),
    price_above_cost: money.margin.compare(0) > 0,
  };
}

describe.each(nursery.plans)('%s', (plan) => {
  const differences = (changes: Changes = {}): string[] => nursery.differences(pottingByPotting, plan, changes);

  test('every entry is worked out here', () => {
    const known = Object.keys(nursery.secondValues(pottingByPotting, plan)).sort();
    expect(known).toEqual(nursery.model.cells.map(({ name }) => name).sort());
  });

  test('today', () => expect(differences()).toEqual([]));

  test('the reviewed figures', () => {
    const figures = expectedOf('channel-or-bench')[plan]!;
    expect(written(new Map(Object.entries(nursery.secondValues(pottingByPotting, plan))), figures)).toEqual(figures);
  });

  test.each(nursery.ranges())('%s at either end', (name, low, high) => {
    expect(differences({ [name]: low })).toEqual([]);
    expect(differences({ [name]: high })).toEqual([]);
  });

  test.each<[string, Changes]>([
    ['an order that just fills its benches', { order_week: '684' }],
    ['a potting every second week', { interval: '2' }],
    ['potting twice a week', { interval: '0.5' }],
    ['fewer benches', { benches: '41' }],
  ])('%s', (_, changes) => expect(differences(changes)).toEqual([]));
});

describe('published figures', () => {
  const value = (cell: string, changes: Changes, decimals: number): string =>
    rounded(nursery.values(tightFirst, changes).get(cell) as Fraction, decimals);

  // Greenhouse Grower, "Five Keys to Accurate Greenhouse Production Costing": 40,000 square feet, 75 % of it used for
  // 52 weeks, 1,000,000 $ a year: 0.64 $ a square-foot-week.
  test('a house of 40,000 square feet costs 0.64 $ a square-foot-week', () => {
    expect(value('own_rate', { benches: '400', house_cost: '1000000' }, 2)).toBe('0.64');
  });

  // GPN, "Grower 101: Calculations Part IV: Spacing Containers": 6 in square 400, 10 in square 144 per 100 square feet.
  test('a bench of 100 square feet holds 400 pots at 6 in and 144 at 10 in', () => {
    expect([value('tight_density', {}, 0), value('final_density', {}, 0)]).toEqual(['400', '144']);
  });

  // New York State Flower Growers Bulletin 64: 2.08 $ a square foot and year, 52 weeks, all of it used: 4 cents.
  test('2.08 $ a square foot and year is 4 cents a week', () => {
    const changes = { benches: '1', bench_area: '100', house_cost: '208', bench_use: '100' };
    expect(value('own_rate', changes, 2)).toBe('0.04');
  });
});

test('with free bench space, spacing by hand does not pay', () => {
  const margins = nursery.plans.map((plan) => nursery.values(plan, { space_rate: '0' }).get('margin') as Fraction);
  expect(margins[1]!.lt(margins[0]!)).toBe(true);
});

describe('checks', () => {
  test.each<[check: string, plan: string, changes: Changes]>([
    ['benches_enough', straight, { order_week: '840' }],
    ['hands_enough', tightFirst, { hours_most: '25' }],
    ['rate_covers_house', tightFirst, { space_rate: '0.28' }],
    ['price_above_cost', straight, { price: '4.2' }],
  ])('%s can fail', (check, plan, changes) => expect(nursery.failing(plan, changes)).toEqual([check]));
});
