import { expect, it } from 'vitest';
import { edit } from '../../../src/model/edit';
import { evaluatePlan } from '../../../src/model/values';
import { planScheduleOf, samePlanSchedule, type PlanSchedule } from '../../../src/present/beds/planSchedule';
import { scheduleView } from '../../../src/present/beds/stages/schedules';
import { questionsFor } from '../../../src/present/page/questions';
import { modelOf, planOf } from '../../model/table';
import type { Model } from '../../../src/model/model';

const farm = modelOf(`
  boards [board]: 90 | crop: boards
  every [week]: 1 | crop: interval
  days [week]: 2 | crop: stage 1 time
  holes [plant/board]: 18 | crop: stage 1 density
  price [EUR/plant]: 1
`);

const planSchedule = (model: Model): PlanSchedule | undefined =>
  planScheduleOf(model.cells, evaluatePlan(planOf(model)));
const typed = (model: Model, name: string, text: string): Model => {
  const row = model.cells.find((cell) => cell.name === name)?.row ?? NaN;
  return edit(model, { row, column: 'formula', text }).model;
};

it('an edit that the beds do not depend on leaves the schedule the same', () => {
  expect(samePlanSchedule(planSchedule(farm), planSchedule(typed(farm, 'price', '2')))).toBe(true);
  expect(samePlanSchedule(planSchedule(farm), planSchedule(typed(farm, 'holes', '20')))).toBe(false);
});

it('a fault names the entry that leads to it', () => {
  const found = scheduleView(planSchedule(typed(farm, 'holes', '0'))!);
  expect(found.faults.map(({ code, where }) => [code, where.cell])).toEqual([['schedule-density', 'holes']]);
  expect(scheduleView(planSchedule(farm)!).faults).toEqual([]);
});

it('a model without a crop schedule is not asked about its beds', () => {
  const plain = modelOf('price [EUR/plant]: 1');
  expect(planSchedule(plain)).toBeUndefined();
  expect(questionsFor(plain)).not.toContain('beds');
  expect(questionsFor(farm)).toContain('beds');
});
