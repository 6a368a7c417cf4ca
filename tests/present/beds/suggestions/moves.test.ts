import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { readModelText } from '../../../../src/files/readModel';
import { cropParts } from '../../../../src/model/cropParts';
import { edit } from '../../../../src/model/edit';
import type { Model } from '../../../../src/model/model';
import { evaluatePlan } from '../../../../src/model/values';
import { batchFlow, wholeBoards } from '../../../../src/trade/schedule';
import { suggestions, type Change } from '../../../../src/trade/suggestions';
import { planScheduleOf } from '../../../../src/present/beds/planSchedule';
import { movesFor, movesSentence, offers, type Move } from '../../../../src/present/beds/suggestions/moves';
import { modelOf, planOf } from '../../../model/table';
import { english, read } from '../given';

const farm = `
  boards [board]: 90 | crop: boards
  every [day]: 2 | label: Between sowings | crop: interval
  first [day]: crowded | crop: stage 1 time | in Straight: 0 | in Crowded:
  crowded [week]: 2 | label: Weeks crowded | range: 1 3
  holes [plant/board]: 72 | label: Holes crowded | crop: stage 1 density
  then [day]: 15 | label: Days wide | crop: stage 2 time | range: 14 17
  wide [plant/board]: tight_rows * 6 | crop: stage 2 density
  tight_rows [plant/board]: 3
`;
const model = modelOf(farm);
const parts = cropParts(model.cells);
const found = (change: Change, name = 'Crowded'): Move[] | undefined =>
  movesFor(model, planOf(model, name), parts, change);
const written = (moves: readonly Move[] | undefined): string[] | undefined =>
  moves?.map(({ cell, edit: { column, text } }) => `${cell.name} ${column} ${text}`);

describe('a change is put', () => {
  it.each<[string, Change, string[]]>([
    [
      'in this plan’s column where another plan follows the number',
      { kind: 'interval', to: decimal(2.5) },
      ['every plan: Crowded 2.5'],
    ],
    [
      'in the input behind an entry, in its own unit',
      { kind: 'time', stage: 1, to: decimal(17.5) },
      ['crowded formula 2.5'],
    ],
    ['in all plans rather than instead of a range', { kind: 'time', stage: 2, to: decimal(14) }, ['then formula 14']],
    [
      'in two inputs',
      { kind: 'shift', stage: 2, to: decimal(18.5), from: 1, left: decimal(10.5) },
      ['then formula 18.5', 'crowded formula 1.5'],
    ],
  ])('%s', (_claim, change, edits) => {
    expect(written(found(change))).toEqual(edits);
  });

  it('nowhere where a part is calculated from more than an input', () => {
    expect(found({ kind: 'density', stage: 2, to: decimal(20) })).toBeUndefined();
  });

  it('nowhere where the input moves another part too', () => {
    const one = modelOf(farm.replace('then [day]: 15', 'then [day]: crowded').replace(' | range: 14 17', ''));
    const change: Change = { kind: 'time', stage: 2, to: decimal(14) };
    expect(movesFor(one, planOf(one, 'Crowded'), cropParts(one.cells), change)).toBeUndefined();
  });

  it('in a stage’s time that the plan sets for itself', () => {
    expect(written(found({ kind: 'time', stage: 1, to: decimal(3) }, 'Straight'))).toEqual(['first plan: Straight 3']);
  });
});

it('what was put where is said', () => {
  const say = (change: Change): string => read(movesSentence(found(change) ?? [], 'Crowded', english));
  expect(say({ kind: 'interval', to: decimal(2.5) })).toBe(
    'Between sowings: 2.5 days instead of 2 days, in Crowded only.',
  );
  expect(say({ kind: 'shift', stage: 2, to: decimal(18.5), from: 1, left: decimal(10.5) })).toBe(
    'Days wide: 18.5 days instead of 15 days, outside its range of 14 to 17 days, in every plan. ' +
      'Weeks crowded: 1.5 weeks instead of 2 weeks.',
  );
});

function after(before: Model, moves: readonly Move[]): Model {
  return moves.reduce((now, move) => edit(now, move.edit).model, before);
}

/** The headlines of all plans but one. */
function headlinesBeside({ cells, plans }: Model, index: number): string[] {
  const headlines = cells.filter(({ role }) => role === 'headline');
  return plans
    .filter((_plan, i) => i !== index)
    .map((plan) => {
      const { numbers } = evaluatePlan(plan);
      return headlines.map(({ id }) => numbers[id]?.toString()).join(' ');
    });
}

const shipped = ['transplant-hire', 'density-lesson', 'three-stage', 'channel-or-bench'].flatMap((file) => {
  const read = readModelText(readFileSync(`models/${file}.csv`, 'utf8')).model;
  return read.plans.map((plan, i) => [file, plan.name, read, i] as const);
});

it.each(shipped)('%s, %s: what is put finishes as many as was suggested, and no other plan moves', (...given) => {
  const [, , before, index] = given;
  const plan = before.plans[index]!;
  const planSchedule = planScheduleOf(before.cells, evaluatePlan(plan))!;
  for (const { change, batch, finishedPerWeek } of suggestions(planSchedule.schedule)) {
    const moves = movesFor(before, plan, planSchedule.parts, change);
    if (moves === undefined) continue;
    const next = after(before, moves);
    const { schedule } = planScheduleOf(next.cells, evaluatePlan(next.plans[index]!))!;
    expect(wholeBoards(schedule).batch.toNumber()).toBe(batch.toNumber());
    expect(batchFlow(schedule, batch).minus(finishedPerWeek).abs().lt('1e-9')).toBe(true);
    if (moves.some(({ where }) => where === 'every plan')) continue;
    expect(headlinesBeside(next, index)).toEqual(headlinesBeside(before, index));
  }
});

it('what asks for more than is held possible is said so, and comes last', () => {
  const suggest = (change: Change) => ({ change, batch: decimal(1), finishedPerWeek: decimal(1), gain: decimal(1) });
  const changes: Change[] = [
    { kind: 'time', stage: 2, to: decimal('11.5') },
    { kind: 'time', stage: 2, to: decimal(14) },
    { kind: 'density', stage: 2, to: decimal(20) },
  ];
  const sentence = offers(model, planOf(model, 'Crowded'), parts, changes.map(suggest), english).map(
    ({ change, moves, beyond }) => [change.to.toNumber(), moves?.length, read(beyond)],
  );
  expect(sentence).toEqual([
    [14, 1, ''],
    [20, undefined, ''],
    [11.5, 1, ', outside its range of 14 to 17 days'],
  ]);
});
