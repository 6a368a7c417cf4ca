import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { edit, editIn } from '../../src/model/edit';
import { cellNamed } from '../../src/model/model';
import { evaluatePlan } from '../../src/model/values';
import { createFormat, space } from '../../src/present/text/numberFormat';
import { toldAtOnce } from '../../src/present/told/toldText';
import {
  agree,
  expectedOf,
  rounded,
  Shipped,
  written,
  type Changes,
  type Given,
  type Results,
} from '../models/shipped';
import { largestBatch, standing, type Stage } from './batchesOnBoards.oracle';

/**
 * `models/density-lesson.csv` on paper: exact fractions, written from the trade's rules and not from the file's
 * formulas. With the numbers that the file comes with, in one spacing and in two:
 *   plants on a board of 24 in x 48 in = 1,152 in²: 1,152/16 = 72, 1,152/64 = 18
 *   board-weeks of one head: 3/18 = 1/6; 1/72 + 2/18 = 1/8. Heads a week: 90 x 6 = 540; 90 x 8 = 720
 *   by weeks 30 and 60 boards: promised (2,160 + 1,080)/3 = 1,080; real min(2,160, 540) = 540
 *   money a week: 540 x 0.60 = 324; 720 x 0.60 - 720 x 10/3,600 x 18 = 432 - 36 = 396
 */
const lesson = new Shipped('density-lesson');
const [one, two] = ['One spacing', 'Two spacings'];
const zero = new Fraction(0);
const daysPerWeek = 7;

function stages(given: Given): Stage[] {
  const onBoard = (room: string): Fraction => given('board_area').mul(12).mul(12).div(given(room));
  const kept = new Fraction(1);
  return [
    { days: given('nursery_time').mul(daysPerWeek), density: onBoard('nursery_space'), kept },
    { days: given('final_time').mul(daysPerWeek), density: onBoard('final_space'), kept },
  ].filter(({ days }) => days.compare(0) > 0);
}

/** Heads a week that a stage passes on from some boards. */
function passesOn(boards: Fraction, { density, days }: Stage): Fraction {
  return boards.mul(density).div(days).mul(daysPerWeek);
}

/** One nursery board keeps as many wide ones filled as passes on what it passes on; both share all the boards. */
function keepingPace(boards: Fraction, running: readonly Stage[]): { nursery: Fraction; week: Fraction } {
  const eachPassesOn = running.map((stage) => passesOn(new Fraction(1), stage));
  const boardsForOneHead = eachPassesOn.map((flow) => flow.inverse());
  const week = boards.div(boardsForOneHead.reduce((sum, needed) => sum.add(needed), zero));
  return { nursery: running.length > 1 ? week.mul(boardsForOneHead[0]!) : zero, week };
}

/** Boards shared by weeks: what that promises, and what the slowest stage lets through. */
function byWeeks(boards: Fraction, running: readonly Stage[]): Record<'nursery' | 'promised' | 'real', Fraction> {
  const days = running.reduce((sum, stage) => sum.add(stage.days), zero);
  const shares = running.map((stage) => boards.mul(stage.days).div(days));
  const standingThere = running.reduce((sum, { density }, i) => sum.add(shares[i]!.mul(density)), zero);
  const flows = running.map((stage, i) => passesOn(shares[i]!, stage));
  return {
    nursery: running.length > 1 ? shares[0]! : zero,
    promised: standingThere.div(days).mul(daysPerWeek),
    real: flows.reduce((least, flow) => (flow.lt(least) ? flow : least)),
  };
}

function onPaper(given: Given): Results {
  const running = stages(given);
  const boards = given('boards');
  const pace = keepingPace(boards, running);
  const shortcut = byWeeks(boards, running);
  const moved = running.length > 1 ? pace.week : zero;
  const moving = moved.mul(given('move_time')).div(3600).mul(given('hour_cost'));
  const days = given('interval').mul(daysPerWeek);
  const whole = largestBatch(running, standing(running, days), boards.valueOf());
  return {
    nursery_density: given('board_area').mul(144).div(given('nursery_space')),
    final_density: given('board_area').mul(144).div(given('final_space')),
    heads_week: pace.week,
    nursery_boards: pace.nursery,
    by_weeks_boards: shortcut.nursery,
    promised_week: shortcut.promised,
    real_week: shortcut.real,
    moving_cost: moving,
    left_week: pace.week.mul(given('head_worth')).sub(moving),
    whole_boards: new Fraction(whole).div(given('interval')).gte(pace.week),
  };
}

describe.each(lesson.plans)('%s', (plan) => {
  test('every entry is worked out here', () => {
    const known = Object.keys(lesson.secondValues(onPaper, plan)).sort();
    expect(known).toEqual(lesson.model.cells.map(({ name }) => name).sort());
  });

  test('today', () => expect(lesson.differences(onPaper, plan)).toEqual([]));

  test('the reviewed figures', () => {
    const figures = expectedOf('density-lesson')[plan]!;
    expect(written(new Map(Object.entries(lesson.secondValues(onPaper, plan))), figures)).toEqual(figures);
  });

  test.each<[string, Changes]>([
    ['weeks that are no multiples of the interval', { final_time: '2.5' }],
    ['boards that hold no whole number of plants', { final_space: '81' }],
    ['another bed', { boards: '77', interval: '0.5' }],
    ['slow hands', { move_time: '16', hour_cost: '24', head_worth: '0.45' }],
  ])('%s', (_, changes) => expect(lesson.differences(onPaper, plan, changes)).toEqual([]));
});

test('a lesson of 12 to 20 entries', () => {
  expect(lesson.model.cells.length).toBeGreaterThanOrEqual(12);
  expect(lesson.model.cells.length).toBeLessThanOrEqual(20);
});

/** Plain numbers as the lesson writes them: with four digits, or all that stand before the point. */
function plainly(value: Fraction): string {
  const before = Math.floor(Math.log10(value.valueOf())) + 1;
  return Number(rounded(value, Math.max(0, 4 - before))).toLocaleString('en-US', { maximumFractionDigits: 4 });
}

function toldModel(changes: Changes): string[] {
  let { model } = lesson;
  for (const [name, text] of Object.entries(changes)) {
    const plan = model.plans[1]!;
    model = edit(model, editIn(model, plan, cellNamed(model, name)!.id, text)).model;
  }
  const values = model.plans.map((plan) => evaluatePlan(plan));
  const texts = model.lines.flatMap((line) => (line.kind === 'text' ? [`${line.label} ${line.note}`] : []));
  return texts.map((text) => toldAtOnce(model, values, text, createFormat('en-US')).replaceAll(space, ' '));
}

/** Every answer on paper, from what is given in the two plans: the shares in exact fractions, written out. */
function answersOnPaper(changes: Changes): [step: number, says: string][] {
  const given = (name: string): Fraction => lesson.inputs(two, changes).get(name)!;
  const running = stages(given);
  const [nursery, wide] = running.map(({ density }) => density) as [Fraction, Fraction];
  const [boards, tight, late] = ['boards', 'nursery_time', 'final_time'].map(given) as [Fraction, Fraction, Fraction];
  const pace = keepingPace(boards, running);
  const shortcut = byWeeks(boards, running);
  const alone = boards.mul(wide).div(tight.add(late));
  const more = pace.week.sub(alone);
  const moving = pace.week.mul(given('move_time')).div(3600).mul(given('hour_cost'));
  const worth = more.mul(given('head_worth'));
  const money = (value: Fraction): string => `${rounded(value, 2)} USD`;
  const shared = new Fraction(2).div(nursery).add(new Fraction(2).div(wide));
  const n = plainly;
  return [
    [1, `room for ${n(nursery)} plants on a board, at ${n(given('final_space'))} in² per plant for ${n(wide)}.`],
    [3, `${n(pace.nursery)}. Most people go by the weeks and say ${n(shortcut.nursery)}.`],
    [3, `${n(pace.nursery)} nursery boards and ${n(boards.sub(pace.nursery))} wide ones.`],
    [4, `= ${n(pace.week)} heads a week; one spacing for as many weeks gives ${n(alone)}.`],
    [4, `× ${n(wide)} ÷ ${n(late)} = ${n(pace.week)} leave the wide boards.`],
    [5, `that is ${n(shortcut.promised)} heads a week, where one spacing gives ${n(alone)}.`],
    [6, `sets the pace: ${n(shortcut.real)} heads a week, and one spacing gives ${n(alone)}.`],
    [8, `${n(more)} heads more × ${n(given('head_worth'))} = ${money(worth)} a week.`],
    [8, `Left: ${money(worth.sub(moving))} a week.`],
    [9, `that buys ${n(worth.div(pace.week).div(given('hour_cost')).mul(3600))} s per plant.`],
    [
      10,
      `= ${n(boards.div(shared))} heads a week; × 2 ÷ ${n(nursery)} = ${n(boards.div(shared).mul(2).div(nursery))} nursery`,
    ],
    [10, `: ${n(boards)} × ${n(wide)} ÷ 4 = ${n(boards.mul(wide).div(4))}.`],
    [10, `${n(boards.div(4).floor())} boards a week make ${n(boards.div(4).floor().mul(wide))} heads.`],
    [11, `somebody must want ${n(more)} heads more each week.`],
  ];
}

describe('the answers are worked out from the numbers of the model', () => {
  const answer = (step: number, changes: Changes = {}): string =>
    toldModel(changes).find((text) => text.startsWith(`Step ${step}.`)) ?? '';

  describe.each<[string, Changes]>([
    ['as the lesson comes', {}],
    ['with a larger bed and a wider board', { boards: '120', board_area: '16', move_time: '8' }],
    [
      'with longer weeks and dearer hours',
      { nursery_time: '1.5', final_time: '2.5', hour_cost: '20', head_worth: '0.5' },
    ],
  ])('%s', (_claim, changes) => {
    test.each(answersOnPaper(changes))('step %i: %s', (step, says) => {
      expect(answer(step, changes)).toContain(says);
    });
  });

  test('with one spacing: plants standing, and heads a week by Little’s law', () => {
    expect(answer(2)).toContain(
      '90 boards × 18 = 1,620 plants stand on the bed. Each stays 3 weeks, so 1,620 ÷ 3 = 540',
    );
  });

  test('step 9: at the seconds it names, and at no others, both plans leave the same', () => {
    expect(answer(9)).toContain('that buys 30 s per plant');
    const [before, after] = [one, two].map((plan) => lesson.values(plan, { move_time: '30' }).get('left_week')!);
    expect(agree(before, after!)).toBe(true);
    expect(lesson.values(two, { move_time: '30.1' }).get('left_week')).not.toEqual(before);
  });

  test('step 10: the check fails for one spacing where the lesson says that whole boards lose heads', () => {
    const [after, before] = [{ nursery_time: '2', final_time: '2' }, { final_time: '4' }];
    expect(agree(lesson.values(two, after).get('heads_week'), new Fraction(648))).toBe(true);
    expect(lesson.failing(two, after)).toEqual([]);
    expect(lesson.failing(one, before)).toEqual(['whole_boards']);
  });
});

describe('whatever the weeks and the spacings', () => {
  const weeks = fc.integer({ min: 1, max: 12 }).map((halves) => new Fraction(halves, 2));
  const room = fc.integer({ min: 9, max: 144 });
  const decimals = (x: Fraction): string => rounded(x, 1);

  test('the split by weeks gives what one spacing gives, and keeping pace gives no less', () => {
    fc.assert(
      fc.property(weeks, weeks, room, room, (nursery, final, a, b) => {
        const spaces = { nursery_space: String(Math.min(a, b)), final_space: String(Math.max(a, b)) };
        const after = lesson.values(two, { ...spaces, nursery_time: decimals(nursery), final_time: decimals(final) });
        const before = lesson.values(one, { ...spaces, final_time: decimals(nursery.add(final)) });
        const [real, pace] = ['real_week', 'heads_week'].map((name) => after.get(name) as Fraction);
        const gained = pace!.sub(real!);
        return agree(real, before.get('heads_week')!) && (gained.compare(0) >= 0 || agree(pace, real!));
      }),
      { seed: 5, numRuns: 80 },
    );
  });
});
