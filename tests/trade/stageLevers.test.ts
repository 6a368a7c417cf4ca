import { describe, expect, it } from 'vitest';
import { numberToText } from '../../src/core/number';
import type { Model } from '../../src/model/model';
import { evaluatePlan } from '../../src/model/values';
import type { View } from '../../src/model/view';
import { heldBy, stageLevers } from '../../src/trade/stageLevers';
import { shippedModels } from '../model/shippedModels';
import { modelOf, planOf } from '../model/table';

/** Each early stage of a plan as `1: times | densities | what holds the total`. */
function told(model: Model, plan?: string): string[] {
  const view: View = { model, result: 0, plan: planOf(model, plan), against: undefined };
  const values = evaluatePlan(view.plan);
  return stageLevers(view, values).map((found) => {
    const names = [found.times, found.densities].map((levers) => levers.map(({ cell }) => cell.name).join(' or '));
    const held = heldBy(view, values, found, found.times[0]!);
    return `${found.stage}: ${names.join(' | ')} | ${held === undefined ? 'none' : `${held.lever.cell.name} by ${numberToText(held.each)}`}`;
  });
}

function shipped(file: string): Model {
  return shippedModels.find(([name]) => name === file)![1];
}

describe('the early stages of the shipped models are moved by', () => {
  it.each([
    ['transplant-hire.csv', 'Nursery first', ['1: nursery_time | nursery_density | finish_time_after_nursery by 1']],
    ['transplant-hire.csv', 'Straight to finishing', []],
    ['density-lesson.csv', 'Two spacings', ['1: nursery_time | nursery_space or board_area | final_time by 1']],
    ['three-stage.csv', 'One stage', []],
    ['three-stage.csv', 'Two stages', ['2: middle_time | middle_density | final_time_two by 1']],
    [
      'three-stage.csv',
      'Three stages',
      ['1: tight_time | tight_density | middle_time by 1', '2: middle_time | middle_density | final_time_three by 1'],
    ],
    [
      'channel-or-bench.csv',
      'Pot to pot first',
      ['1: tight_weeks | tight_space or bench_area | final_time_after by 1'],
    ],
  ])('%s, %s', (file, plan, levers) => expect(told(shipped(file), plan)).toEqual(levers));

  it('nothing where there is no crop', () => {
    const model = shipped('plug-media.csv');
    expect(model.plans.flatMap(({ name }) => told(model, name))).toEqual([]);
  });
});

const bed = (first: string, last: string): string => `
  boards [board]: 90 | crop: boards
  every [day]: 7 | crop: interval
  one [plant/board]: 1
  ${first}
  holes [plant/board]: 72 | crop: stage 1 density
  ${last}
  wide [plant/board]: 18 | crop: stage 2 density
`;

describe('the total time is held by', () => {
  it.each([
    [
      'the time of the next stage, in its own unit',
      'early [week]: 1 | crop: stage 1 time',
      'late [day]: 14 | crop: stage 2 time',
      'late by 7',
    ],
    [
      'the input that it is added up from',
      'early [day]: 7 | crop: stage 1 time',
      'rest [day]: 4\nleast [day]: 10\nlate [day]: 2 * rest + least | crop: stage 2 time',
      'least by 1',
    ],
    [
      'nothing where that is no day for a day',
      'early [day]: 7 | crop: stage 1 time',
      'rest [day]: 7\nlate [day]: 2 * rest | crop: stage 2 time',
      'none',
    ],
    [
      'nothing where the early stage is not',
      'half [day]: 7\nearly [day]: 2 * half | crop: stage 1 time',
      'late [day]: 14 | crop: stage 2 time',
      'none',
    ],
    [
      'nothing where one input gives both times',
      'early [day]: 7 | crop: stage 1 time',
      'rest [day]: 7\nlate [day]: early + rest | crop: stage 2 time',
      'none',
    ],
  ])('%s', (_claim, first, last, held) => {
    expect(told(modelOf(bed(first, last))).map((line) => line.split(' | ')[2])).toEqual([held]);
  });
});
