import Fraction from 'fraction.js';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { readModelText } from '../../src/files/readModel';
import { edit, editIn } from '../../src/model/edit';
import { cellNamed, type Model } from '../../src/model/model';
import { evaluatePlan } from '../../src/model/values';
import { averageStanding, entering, standing, type Stage } from './batchesOnBoards.oracle';
import { inputsOf, rowsOf, stagesOf, transplantHire, type Inputs, type Results } from './transplantHire.oracle';
import { machineWith } from '../cli/machine';

const read = (name: string): string => readFileSync(new URL(`../../models/${name}`, import.meta.url), 'utf8');
const csv = read('transplant-hire.csv');
const { model } = readModelText(csv);
const rows = rowsOf(csv).filter((row) => row.get('name'));
const named = (row: ReadonlyMap<string, string>, column: string): string => row.get(column) ?? '';

const plans = [
  { name: 'Straight to finishing', nurseryFirst: false },
  { name: 'Nursery first', nurseryFirst: true },
];
const nurseryFirst = plans[1]!;

const checks = rows.filter((row) => named(row, 'role') === 'check').map((row) => named(row, 'name'));
const closest = new Fraction(1n, 10n ** 30n);

/** Every cell of a plan by name: exact text, or true and false. */
type Values = ReadonlyMap<string, string | boolean>;
type Changes = Readonly<Record<string, string>>;

function engineValues(plan: string, changes: Changes = {}): Values {
  const changed = Object.entries(changes).reduce((before: Model, [name, text]) => {
    const from = before.plans.find((candidate) => candidate.name === plan)!;
    return edit(before, editIn(before, from, cellNamed(before, name)!.id, text)).model;
  }, model);
  const at = changed.plans.find((candidate) => candidate.name === plan)!;
  const { numbers, errors } = evaluatePlan(at);
  expect([...errors.values()]).toEqual([]);
  const isTruth = (id: number): boolean => {
    const content = at.contents[id]!;
    return content.kind === 'calculated' && content.gives === 'truth';
  };
  const value = (id: number): string | boolean => (isTruth(id) ? numbers[id]!.eq(1) : numbers[id]!.toFixed());
  return new Map(changed.cells.map(({ id, name }) => [name, value(id)]));
}

function oracleValues({ name, nurseryFirst: nursery }: (typeof plans)[number], changes: Changes = {}): Results {
  const numbers = Object.entries(changes).map(([input, text]) => [input, new Fraction(text)] as const);
  const inputs: Inputs = new Map([...inputsOf(csv, name), ...numbers]);
  return { ...Object.fromEntries(inputs), ...transplantHire(inputs, nursery) };
}

/** Whether two numbers differ by at most 1e-30 of the one that is right. */
function near(got: Fraction, right: Fraction): boolean {
  return got.sub(right).abs().lte(right.abs().mul(closest));
}

function agree(got: string | boolean | undefined, want: Fraction | boolean): boolean {
  return typeof want === 'boolean' || typeof got !== 'string' ? got === want : near(new Fraction(got), want);
}

/** The cells on which engine and oracle differ, with both values. */
function differences(plan: (typeof plans)[number], changes: Changes = {}): string[] {
  const got = engineValues(plan.name, changes);
  return Object.entries(oracleValues(plan, changes))
    .filter(([name, want]) => !agree(got.get(name), want))
    .map(([name, want]) => `${name}: ${String(got.get(name))}, not ${want.toString()}`);
}

const fraction = (values: Values, name: string): Fraction => new Fraction(String(values.get(name)));

describe('the file', () => {
  test('has no faults and nothing to be warned of', () => {
    expect(model.faults).toEqual([]);
    expect(model.notices).toEqual([]);
    expect(model.plans.map(({ name }) => name)).toEqual(plans.map(({ name }) => name));
  });

  test('has 60 to 100 cells, and no more than 20 for crowding and limits elsewhere', () => {
    const added = model.cells.filter(({ group }) => group === 'Crowding' || group === 'Limits elsewhere');
    expect(added.length).toBeLessThanOrEqual(20);
    expect(model.cells.length - added.length).toBeGreaterThanOrEqual(60);
    expect(model.cells.length - added.length).toBeLessThanOrEqual(100);
  });

  test('says of every input what it is, where it comes from, and how far it may lie off', () => {
    const inputs = rows.filter((row) => /^(\d|$)/.test(named(row, 'formula')));
    const silent = inputs.filter((row) => !named(row, 'note') || !named(row, 'source') || !named(row, 'label'));
    const unbounded = inputs.filter((row) => !named(row, 'low') && !named(row, 'note').startsWith('A decision'));
    const unmeasured = inputs.filter((row) => !named(row, 'unit') && !/plain number/i.test(named(row, 'note')));
    expect(inputs.length).toBeGreaterThan(40);
    expect([...silent, ...unbounded, ...unmeasured].map((row) => named(row, 'name'))).toEqual([]);
  });
});

describe.each(plans)('every cell in exact fractions, $name', (plan) => {
  test('the oracle knows every cell', () => {
    expect(Object.keys(oracleValues(plan)).sort()).toEqual(model.cells.map(({ name }) => name).sort());
  });

  test('today', () => expect(differences(plan)).toEqual([]));

  test.each(rows.filter((row) => named(row, 'low')).map((row) => named(row, 'name')))('%s at either end', (name) => {
    const row = rows.find((candidate) => named(candidate, 'name') === name)!;
    expect(differences(plan, { [name]: named(row, 'low') })).toEqual([]);
    expect(differences(plan, { [name]: named(row, 'high') })).toEqual([]);
  });

  test.each<[string, Changes]>([
    ['balanced flow', { count_whole_boards: '0' }],
    ['a batch set by hand', { batch_by_hand: '1401' }],
    ['reusable plugs', { plug_choice: '2' }],
    ['idle hours that are worth something', { guaranteed_hours: '34.5', idle_hour_value: '9' }],
    ['overtime', { person_hours: '20', staff_hours: '30' }],
    ['a full market', { market_limit: '3000' }],
    ['a market without a limit', { market_limit: '0' }],
    ['a batch every third day', { interval: '3' }],
    ['leaves that touch and cost something', { crowding_loss: '1.5', spread_rate: '25' }],
    ['leaves that touch from the first day', { crowding_loss: '0.5', nursery_density: '480' }],
    ['a loss that takes all', { crowding_loss: '50', pattern: '1.1547' }],
    ['leaves that never touch', { crowding_loss: '1.5', nursery_density: '6' }],
    ['no limits elsewhere', { seedlings_most: '0', packing_hours_most: '0', cold_places: '0' }],
    ['times that are no multiples of the interval', { interval: '1.75', finish_time_straight: '23.25' }],
  ])('%s', (_, changes) => expect(differences(plan, changes)).toEqual([]));
});

test('a difference in the 30th digit is seen', () => {
  const right = oracleValues(nurseryFirst)['margin'] as Fraction;
  expect(near(right.mul(closest.mul('0.9').add(1)), right)).toBe(true);
  expect(near(right.mul(closest.mul('1.1').add(1)), right)).toBe(false);
});

test('the plans agree in what they share and differ in what they do not', () => {
  const [straight, nursery] = plans.map((plan) => engineValues(plan.name)) as [Values, Values];
  expect(nursery.get('staff_wages')).toBe(straight.get('staff_wages'));
  expect(straight.get('transplant_hours')).toBe('0');
  expect(Number(nursery.get('margin'))).toBeGreaterThan(Number(straight.get('margin')));
});

describe('the wage from which the nursery stops paying', () => {
  // Wages enter the margins in proportion, so that two wages worked out by hand give the line and where it meets 0.
  const gain = (wage: string): Fraction => {
    const [before, after] = plans.map((plan) => oracleValues(plan, { wage })['margin'] as Fraction) as [
      Fraction,
      Fraction,
    ];
    return after.sub(before);
  };
  const byHand = gain('0').div(gain('0').sub(gain('1')));

  test.each(['14.5', '1', '13', '17', '20', '60', '0'])(
    'is found from a wage of %s, in its range of 13 to 17 or outside',
    (wage) => {
      const line = ['breakeven', 'f', '--result', 'margin', '--input', 'wage', '--against', plans[0]!.name, '--json'];
      const { output } = runCommand(
        [...line, '--set', `wage=${wage}`],
        machineWith(() => new TextEncoder().encode(csv)),
      );
      const { crossings, holds } = JSON.parse(output) as {
        crossings: { value: string; direction: string }[];
        holds: unknown;
      };
      expect([crossings.map(({ direction }) => direction), holds]).toEqual([['down'], null]);
      expect(
        new Fraction(crossings[0]!.value)
          .div(byHand)
          .sub(1)
          .abs()
          .lte(new Fraction(1n, 10n ** 12n)),
      ).toBe(true);
    },
  );
});

describe('checks', () => {
  test.each(plans)('hold today, $name', ({ name }) => {
    const values = engineValues(name);
    expect(checks.map((check) => values.get(check))).toEqual(checks.map(() => true));
  });

  test.each<[string, Changes]>([
    ['boards_fit', { batch_by_hand: '1401' }],
    ['nursery_boards_enough', { nursery_time: '12' }],
    ['one_hire_enough', { harvest_time: '36' }],
    ['hire_needed', { staff_hours: '62', harvest_time: '24', transplant_time: '9', setting_time: '3' }],
    ['price_above_cost', { price: '0.68' }],
    ['price_above_cost', { crowding_loss: '3', spread_rate: '35' }],
    ['seedlings_enough', { bench_survival: '75' }],
    ['packing_enough', { packing_hours_most: '43' }],
    ['cold_store_enough', { cold_time: '3' }],
  ])('%s can fail', (check, changes) => {
    const values = engineValues(nurseryFirst.name, changes);
    expect(checks.filter((name) => values.get(name) === false)).toEqual([check]);
  });
});

describe('stages keep pace on balanced flow', () => {
  const values = engineValues(nurseryFirst.name, { count_whole_boards: '0' });
  const at = (name: string): Fraction => fraction(values, name);
  const [nursery, finishing] = stagesOf(inputsOf(csv, nurseryFirst.name), true) as [Stage, Stage];
  const aWeek = (boards: string, { density, days }: Stage): Fraction => at(boards).mul(density).div(days).mul(7);

  test('each stage finishes as many plants a week as the other', () => {
    const fromNursery = aWeek('nursery_boards_needed', nursery).mul(nursery.kept).mul(finishing.kept);
    const fromFinishing = aWeek('finishing_boards_needed', finishing).mul(finishing.kept);
    expect(near(fromNursery, at('balanced_week'))).toBe(true);
    expect(near(fromFinishing, at('balanced_week'))).toBe(true);
  });

  test('the two take all the boards there are', () => {
    expect(near(at('nursery_boards_needed').add(at('finishing_boards_needed')), at('boards'))).toBe(true);
  });

  test('boards in proportion to days would finish 3,650 a week: the crowded stage gets far too many', () => {
    const share = ({ days }: Stage): Fraction => at('boards').mul(days).div(nursery.days.add(finishing.days));
    const aWeekFrom = (stage: Stage): Fraction => share(stage).mul(stage.density).div(stage.days).mul(7);
    const flows = [aWeekFrom(nursery).mul(nursery.kept).mul(finishing.kept), aWeekFrom(finishing).mul(finishing.kept)];
    expect(flows.map((flow) => Math.floor(flow.valueOf()))).toEqual([10168, 3650]);
    expect(flows[1]!.lt(at('balanced_week')) && flows[0]!.gt(at('balanced_week'))).toBe(true);
  });
});

describe("Little's law: plants standing = plants entering × time, in the house filled batch by batch", () => {
  test.each(plans)('$name', (plan) => {
    const inputs = inputsOf(csv, plan.name);
    const stages = stagesOf(inputs, plan.nurseryFirst);
    const values = engineValues(plan.name);
    const batches = averageStanding(standing(stages, inputs.get('interval')!));
    const plants = entering(stages, fraction(values, 'batch')).map((batch, i) => batch.mul(batches[i]!));
    const flows = [fraction(values, 'into_water'), fraction(values, 'into_finishing')].slice(-stages.length);
    flows.forEach((flow, i) => expect(near(flow.div(7).mul(stages[i]!.days), plants[i]!)).toBe(true));
  });

  test('on whole boards the house of the nursery plan holds 7,000 and 10,237.5 plants', () => {
    const values = engineValues(nurseryFirst.name);
    expect(fraction(values, 'into_water').mul(10).div(7).valueOf()).toBe(7000);
    expect(fraction(values, 'into_finishing').mul(15).div(7).valueOf()).toBe(10237.5);
  });
});

describe('models/README.md', () => {
  const readme = read('README.md');
  test.each([
    ['Largest batch on whole boards', 'whole_batch_plants', 0],
    ['Finished plants a week, whole boards', 'whole_week', 0],
    ['Finished plants a week, balanced flow', 'balanced_week', 0],
    ['Hours a week needed', 'hours_needed', 1],
    ['Hours a week paid to the hire', 'hire_hours', 1],
    ['Cost of a finished plant', 'cost_per_plant', 3],
    ['Revenue a year', 'revenue', 0],
    ['Margin a year', 'margin', 0],
  ])('%s is what the model says', (label, cell, digits) => {
    const line = readme.split('\n').find((text) => text.startsWith(`| ${label} |`)) ?? '';
    const written = line
      .split('|')
      .slice(2, 4)
      .map((text) => Number(text.replace(/[^\d.]/g, '')));
    const today = plans.map(({ name }) => Number(Number(engineValues(name).get(cell)).toFixed(digits)));
    expect(written).toEqual(today);
  });
});
