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
import { agree, expectedOf, Shipped, written, type Changes, type Given, type Results } from './shipped';

/**
 * `models/three-stage.csv` a second time: exact fractions, written from the trade's rules and not from the file's
 * formulas. Whole boards are counted in pans that are filled batch by batch. By hand, batches every 3.5 days:
 *   One stage: 26 days are 7.4 sowings, so 8 batches at once; 504/8 = 63 boards x 18 = 1,134 plants.
 *   Two stages: 1,560 plants take 26 and 85 boards; 2 or 3 and 4 or 5 batches at once, on the fullest day 3 and 5:
 *     78 + 425 = 503. One plant more takes 27 boards: 81 + 425 = 506.
 *   Three stages: 1,728 plants take 18, 38 and 93 boards; fullest with 2, 2 and 4 batches: 36 + 76 + 372 = 484, or
 *     with 1, 3 and 4: 18 + 114 + 372 = 504.
 */
const farm = new Shipped('three-stage');
const [, twoStages, threeStages] = ['One stage', 'Two stages', 'Three stages'];
const widths = { 'One stage': ['wide'], 'Two stages': ['middle', 'wide'], 'Three stages': ['tight', 'middle', 'wide'] };
const zero = new Fraction(0);
const one = new Fraction(1);
const daysPerWeek = 7;
/** A loss is a small difference of two numbers near 100 %. */
const near100 = { rounding_loss: 100 };

type Width = 'tight' | 'middle' | 'wide';
type ByWidth = (width: Width) => Fraction;

const widthsOf = (plan: string): readonly Width[] => widths[plan as keyof typeof widths] as Width[];
const total = (parts: readonly Fraction[]): Fraction => parts.reduce((sum, part) => sum.add(part), zero);
const above = (a: Fraction, b: Fraction): Fraction => (a.gt(b) ? a.sub(b) : zero);

/** What an entry that differs by plan takes: the time on wide boards, and what is kept at each move and at harvest. */
function cropOf(given: Given, plan: string) {
  const moves = widthsOf(plan).length - 1;
  const word = ['one', 'two', 'three'][moves]!;
  const all = new Fraction(100);
  return {
    final_time: given(`final_time_${word}`),
    final_survival: given(moves === 0 ? 'kept_straight' : 'kept_moved'),
    ...(moves === 2 && { tight_survival: given('first_kept') }),
    ...(moves > 0 && { middle_survival: given(moves === 2 ? 'second_kept' : 'first_kept') }),
    boards: given('pans').mul(given('boards_per_pan')),
    kept: {
      tight: moves === 2 ? given('first_kept') : all,
      middle: moves === 0 ? all : given(moves === 2 ? 'second_kept' : 'first_kept'),
    },
  };
}

function stagesOf(given: Given, plan: string): Stage[] {
  const { final_time: days, final_survival: kept, kept: atMove } = cropOf(given, plan);
  return widthsOf(plan).map((width) =>
    width === 'wide'
      ? { days, density: given('final_density'), kept: kept.div(100) }
      : { days: given(`${width}_time`), density: given(`${width}_density`), kept: atMove[width].div(100) },
  );
}

/** Numbers by width from numbers by stage; 0 where a plan has no such boards. */
function byWidth(plan: string, numbers: readonly (Fraction | number)[]): ByWidth {
  const found = new Map(widthsOf(plan).map((width, i) => [width, new Fraction(numbers[i]!)]));
  return (width) => found.get(width) ?? zero;
}

function balanced(given: Given, plan: string) {
  const stages = stagesOf(given, plan);
  const starts = entering(stages, one);
  const boardDays = total(stages.map(({ days, density }, i) => starts[i]!.mul(days).div(density)));
  const kept = stages.reduce((alive, stage) => alive.mul(stage.kept), one);
  const boards = cropOf(given, plan).boards;
  return {
    board_weeks_per_plant: boardDays.div(kept).div(daysPerWeek),
    balanced_week: boards.div(boardDays).mul(kept).mul(daysPerWeek),
  };
}

function flow(given: Given, plan: string) {
  const stages = stagesOf(given, plan);
  const boards = cropOf(given, plan).boards;
  const whole = new Fraction(searchedOnce(stages, given('interval'), boards));
  const batch = given('batch_by_hand').equals(0) ? whole : given('batch_by_hand');
  const week = batch.div(given('interval')).mul(daysPerWeek);
  const { kept } = cropOf(given, plan);
  const middle = week.mul(kept.tight).div(100);
  const wide = middle.mul(kept.middle).div(100);
  const finished = wide.mul(stages.at(-1)!.kept);
  const ceiling = balanced(given, plan);
  return {
    ...ceiling,
    whole_batch_plants: whole,
    batch,
    into_water: week,
    into_middle: middle,
    into_wide: wide,
    finished_week: finished,
    finished_year: finished.mul(given('weeks_per_year')),
    rounding_loss: ceiling.balanced_week.sub(finished).div(ceiling.balanced_week).mul(100),
  };
}

function boardsOf(given: Given, plan: string, batch: Fraction) {
  const stages = stagesOf(given, plan);
  const history = standing(stages, given('interval'));
  const each = wholeBoards(stages, batch.valueOf());
  const batchOf = byWidth(plan, each);
  const fullest = byWidth(
    plan,
    mostStanding(history).map((n, i) => n * each[i]!),
  );
  return {
    tight_boards_batch: batchOf('tight'),
    middle_boards_batch: batchOf('middle'),
    wide_boards_batch: batchOf('wide'),
    tight_boards_needed: fullest('tight'),
    middle_boards_needed: fullest('middle'),
    wide_boards_needed: fullest('wide'),
    boards_in_use: total(averageStanding(history).map((n, i) => n.mul(each[i]!))),
  };
}

function hoursOf(given: Given, plan: string, plants: ReturnType<typeof flow>, boards: ReturnType<typeof boardsOf>) {
  const paid = (step: string, aWeek: Fraction): Fraction =>
    given(step).mul(aWeek).mul(given('allowance').div(100).add(1)).div(3600);
  const emptied = total([boards.tight_boards_batch, boards.middle_boards_batch, boards.wide_boards_batch]);
  const washed = emptied.div(given('interval')).mul(daysPerWeek);
  const moves = widthsOf(plan).length - 1;
  const hours = {
    tight_move_hours: moves === 2 ? paid('tight_move_time', plants.into_middle) : zero,
    wide_move_hours: moves > 0 ? paid('wide_move_time', plants.into_wide) : zero,
    harvest_hours: paid('harvest_time', plants.finished_week),
    setting_washing_hours: paid('setting_time', plants.into_water).add(paid('washing_time', washed)),
  };
  const needed = total(Object.values(hours));
  let helpers = zero;
  while (helpers.lt(above(needed, given('staff_hours')))) helpers = helpers.add(given('hour_step'));
  return { ...hours, hours_needed: needed, helper_hours: helpers };
}

/** Equal payments at the end of each year whose values today add up to 1. */
function repayment(given: Given): Fraction {
  const growth = given('interest_rate').div(100).add(1);
  const years = Array.from({ length: given('board_life').valueOf() }, (_, year) => growth.pow(-1 - year));
  return total(years).inverse();
}

function moneyOf(given: Given, plants: ReturnType<typeof flow>, helperHours: Fraction) {
  const weeks = given('weeks_per_year');
  const beyond = above(plants.finished_week, given('market_limit'));
  const hourCost = given('wage').mul(given('on_cost').div(100).add(1));
  const sown = plants.into_water.mul(100).div(given('bench_survival')).mul(given('plugs_per_plant')).mul(weeks);
  const bought = given('tight_boards_bought').add(given('middle_boards_bought'));
  const sales = {
    sales_full_price: plants.finished_week.sub(beyond).mul(given('price')).mul(weeks),
    sales_lower_price: beyond.mul(given('lower_price')).mul(weeks),
  };
  const spent = {
    young_plant_year: sown.mul(given('seed_price').add(given('plug_price'))),
    packing_year: plants.finished_year.mul(given('packing_price')),
    staff_wages: given('staff_hours').mul(hourCost).mul(weeks),
    helper_wages: helperHours.mul(hourCost).mul(weeks),
    boards_year: bought.mul(given('board_price')).mul(repayment(given)),
  };
  const revenue = total(Object.values(sales));
  const costs = total(Object.values(spent)).add(given('house_cost'));
  return {
    ...sales,
    ...spent,
    hour_cost: hourCost,
    revenue,
    costs,
    margin: revenue.sub(costs),
    cost_per_plant: costs.div(plants.finished_year),
  };
}

function batchByBatch(given: Given, plan: string): Results {
  const { kept, ...crop } = cropOf(given, plan);
  const plants = flow(given, plan);
  const boards = boardsOf(given, plan, plants.batch);
  const hours = hoursOf(given, plan, plants, boards);
  const money = moneyOf(given, plants, hours.helper_hours);
  return {
    ...crop,
    ...plants,
    ...boards,
    ...hours,
    ...money,
    tight_survival: kept.tight,
    middle_survival: kept.middle,
    boards_fit: plants.batch.lte(plants.whole_batch_plants),
    tight_boards_enough: boards.tight_boards_needed.lte(given('tight_boards_bought')),
    middle_boards_enough: boards.middle_boards_needed.lte(given('middle_boards_bought')),
    helpers_enough: hours.helper_hours.lte(given('hours_most')),
    price_above_cost: money.margin.compare(0) > 0,
  };
}

describe.each(farm.plans)('%s', (plan) => {
  const differences = (changes: Changes = {}): string[] => farm.differences(batchByBatch, plan, changes, near100);

  test('every entry is worked out here', () => {
    const known = Object.keys(farm.secondValues(batchByBatch, plan)).sort();
    expect(known).toEqual(farm.model.cells.map(({ name }) => name).sort());
  });

  test('today', () => expect(differences()).toEqual([]));

  test('the reviewed figures', () => {
    const figures = expectedOf('three-stage')[plan]!;
    expect(written(new Map(Object.entries(farm.secondValues(batchByBatch, plan))), figures)).toEqual(figures);
  });

  test.each(farm.ranges())('%s at either end', (name, low, high) => {
    expect(differences({ [name]: low })).toEqual([]);
    expect(differences({ [name]: high })).toEqual([]);
  });

  test.each<[string, Changes]>([
    ['a batch set by hand', { batch_by_hand: '1001' }],
    ['a batch every third day', { interval: '3' }],
    ['a batch every day', { interval: '1' }],
    ['a small market', { market_limit: '2000' }],
    ['helpers by the hour', { hour_step: '1' }],
  ])('%s', (_, changes) => expect(differences(changes)).toEqual([]));
});

test('the first move gains more heads than the second, in balanced flow and on whole boards', () => {
  for (const cell of ['balanced_week', 'finished_week']) {
    const [none, once, twice] = farm.plans.map((plan) => farm.values(plan).get(cell) as Fraction);
    expect(once!.sub(none!).gt(twice!.sub(once!))).toBe(true);
    expect(twice!.gt(once!)).toBe(true);
  }
});

test("Little's law: plants standing = plants entering x time, in pans filled batch by batch", () => {
  const inputs = farm.inputs(threeStages);
  const values = farm.values(threeStages);
  const stages = stagesOf((name) => inputs.get(name)!, threeStages);
  const batches = averageStanding(standing(stages, inputs.get('interval')!));
  const plants = entering(stages, values.get('batch') as Fraction).map((n, i) => n.mul(batches[i]!));
  ['into_water', 'into_middle', 'into_wide'].forEach((name, i) => {
    const flowing = (values.get(name) as Fraction).div(daysPerWeek).mul(stages[i]!.days);
    expect(agree(flowing, plants[i]!)).toBe(true);
  });
});

describe('checks', () => {
  test.each<[check: string, plan: string, changes: Changes]>([
    ['boards_fit', twoStages, { batch_by_hand: '1561' }],
    ['tight_boards_enough', threeStages, { tight_time: '7.5', final_time_three: '15.5' }],
    ['middle_boards_enough', threeStages, { middle_boards_bought: '113' }],
    ['helpers_enough', threeStages, { harvest_time: '40' }],
    ['price_above_cost', twoStages, { price: '1.2' }],
  ])('%s can fail', (check, plan, changes) => expect(farm.failing(plan, changes)).toEqual([check]));
});
