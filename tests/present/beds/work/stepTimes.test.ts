import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../../src/files/readModel';
import { evaluatePlan } from '../../../../src/model/values';
import { calendar } from '../../../../src/trade/calendar';
import { calendarWeeks } from '../../../../src/trade/labour';
import { planScheduleOf } from '../../../../src/present/beds/planSchedule';
import { namesOf } from '../../../../src/present/beds/names';
import {
  stepAllowance,
  countedAtOf,
  countedOptions,
  timeEntries,
  timesExplained,
  usualTimes,
  workSteps,
} from '../../../../src/present/beds/work/stepTimes';
import { idOf, modelOf, planOf } from '../../../model/table';
import { newYear } from '../../../trade/running';

const farm = modelOf(`
  boards [board]: 90 | crop: boards
  setting [s/plant]: 4 | label: Set a plug
  shift [s/plant]: 10 | label: Move a plant
  cut [min/plant]: 0.5 | label: Cut and pack a head
  clean [s/board]: 75 | label: Wash a board
  rest [s/plant]: 3 | label: Look at it
  needed [h/week]: 12 | label: Hours for moving
  wage [EUR/h]: 15 | label: Wage for cutting
  allowance [%]: 20 | label: Allowance
`);
const entries = timeEntries(farm.cells, farm.cells[idOf(farm, 'boards')]);

describe('the times that make hours', () => {
  it('are entries in clock time per plant or board, hours a week and wages not among them', () => {
    expect(entries.map(({ cell, per }) => `${cell.name} per ${per}`)).toEqual([
      'setting per plant',
      'shift per plant',
      'cut per plant',
      'clean per board',
      'rest per plant',
    ]);
  });

  it('count at the task that their words name, else at none', () => {
    expect(usualTimes(entries, 2)).toEqual(['sow', 'move', 'harvest', 'wash', 'none']);
  });

  it('count at the task that their Spanish words name', () => {
    const finca = modelOf(`
      a [s/plant]: 4 | label: Colocar un cubo en su agujero
      b [s/plant]: 12 | label: Trasplantar a una plancha final
      c [s/plant]: 30 | label: Cortar, limpiar y envasar una pieza
      d [s/board]: 75 | label: Lavar una plancha
      e [s/plant]: 3 | label: Mirar
    `);
    expect(usualTimes(timeEntries(finca.cells, undefined), 2)).toEqual(['sow', 'move', 'harvest', 'wash', 'none']);
  });

  it('are told with the allowance that is added to them, by its label', () => {
    expect(timesExplained(stepAllowance(farm.cells))).toContain(' Allowance is added.');
    expect(timesExplained(undefined)).toContain(' No allowance is added.');
  });

  it('stand in the order of the moves where there is one for each', () => {
    const two = modelOf(`
      one [s/plant]: 8 | label: Move to middle boards
      two [s/plant]: 12 | label: Move to wide boards
    `);
    expect(usualTimes(timeEntries(two.cells, undefined), 3)).toEqual(['move 2', 'move 3']);
    expect(usualTimes(timeEntries(two.cells, undefined), 2)).toEqual(['move', 'move']);
  });

  it('become steps in seconds, the allowance in them', () => {
    const values = evaluatePlan(planOf(farm));
    const at = ['sow', 'move 2', 'harvest', 'wash', 'none'] as const;
    expect(workSteps(entries, at, stepAllowance(farm.cells), values)).toEqual([
      { task: 'sow', seconds: 4.8, per: 'plant' },
      { task: 'move', seconds: 12, per: 'plant', stage: 1 },
      { task: 'harvest', seconds: 36, per: 'plant' },
      { task: 'wash', seconds: 90, per: 'board' },
    ]);
    expect(workSteps(entries, at, undefined, values)[0]?.seconds).toBe(4);
  });

  it('can be chosen by stage where there are several moves', () => {
    expect(countedOptions(namesOf(new Map(), 2)).map(({ value }) => value)).toEqual([
      'none',
      'sow',
      'move',
      'harvest',
      'wash',
    ]);
    expect(countedOptions(namesOf(new Map(), 3)).map(({ value }) => value)).toContain('move 3');
  });
});

// The model counts its hours itself, by formulas; the calendar counts them batch by batch.
it.each(['Straight to finishing', 'Nursery first'])('hours of the calendar are those of the model: %s', (name) => {
  const { model } = readModelText(readFileSync('models/transplant-hire.csv', 'utf8'));
  const values = evaluatePlan(planOf(model, name));
  const planSchedule = planScheduleOf(model.cells, values)!;
  const times = timeEntries(model.cells, planSchedule.parts.get('boards'));
  const steps = workSteps(times, usualTimes(times, 2), stepAllowance(model.cells), values);
  const year = calendar({ schedule: planSchedule.schedule, season: planSchedule.season, start: newYear });
  const nobody = { spare: 0, guaranteed: 0, person: 0, beyond: 'overtime' } as const;
  // Two weeks hold seven sowings, one every second day.
  const [one, two] = calendarWeeks(year, steps, nobody)
    .slice(20, 22)
    .map(({ needed }) => needed);
  const itself = values.numbers[idOf(model, 'hours_needed')]!.toNumber();
  expect(((one ?? NaN) + (two ?? NaN)) / 2 / itself).toBeCloseTo(1, 2);
});

it.each([
  ['none', 'none'],
  ['wash', 'wash'],
  ['move', 'move'],
  ['move 12', 'move 12'],
  ['', undefined],
  ['move two', undefined],
  ['prune', undefined],
])('the text %j says that seconds count at %s', (text, at) => expect(countedAtOf(text)).toBe(at));
