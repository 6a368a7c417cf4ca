import { describe, expect, it } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import { namesAmong } from '../../../src/present/text/entryNames';
import { demandsOf } from '../../../src/present/theCase/demands';
import { decisions, guesses } from '../../../src/present/theCase/assumed';
import type { PlanPair } from '../../../src/present/theCase/comparedEntries';
import { readSwitches, switchingSearch } from '../../../src/jobs/switchingSearch';
import { done } from '../../jobs/done';
import { idOf, modelOf } from '../../model/table';
import { format } from './budgets';

const farm = `
  boards [board]: 640 | label: Boards | crop: boards
  move [s/plant]: 12 | range: 9 16 | label: Move a plant | source: timed by hand
  plants [plant/week]: 0 | label: Plants a week | role: headline | in A: 3000 | in B: 4000
  moved [plant/week]: plants | in A: 0 | in B: plants
  hours [h/week]: moved * move | label: Hours moving
  staff [h/week]: 2 * 24 | label: Hours of the staff
  used [board]: 600 | label: Boards used | in A: 600 * 1 | in B: 610 * 1
  weeks [week/year]: 50
  price [EUR/plant]: 0.5 | range: 0.4 0.6 | label: Price | note: a guess
  kept [%]: 95 | label: Kept | in A: kept_a | in B: kept_b
  kept_a [%]: 95
  kept_b [%]: 97
  margin [EUR/year]: plants * price * weeks | role: headline
  enough: hours < 99 | role: check
`.replaceAll(/^ +| \* 1|2 \* /gm, '');

function beside(text = farm): PlanPair {
  const model = modelOf(text);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  return { model, values, plans: [0, 1], nameOf: namesAmong(model.cells), format };
}

describe('what plans ask of people and space', () => {
  it('is what differs, by its kind, the seconds of the work and the boards there are', () => {
    const told = demandsOf(beside()).map(({ heading, rows }) => [
      heading,
      ...rows.map(({ name, values }) => `${name} ${values.join(' | ')}`),
    ]);
    expect(told).toEqual([
      ['Harvest', 'Plants a week 3,000 | 4,000'],
      ['Hours', 'Hours moving 0 | 13.33'],
      ['Seconds of hand work', 'Move a plant 12 | 12'],
      ['Space', 'Boards 640 | 640'],
    ]);
  });
});

describe('a long list', () => {
  it('is cut and says so', () => {
    const many = Array.from({ length: 13 }, (_, i) => `t${i} [s/plant]: ${i + 1} | label: Step ${i}`);
    const [seconds] = demandsOf(beside(`${farm}\n${many.join('\n')}`)).filter(({ kind }) => kind === 'seconds');
    expect(seconds?.heading).toBe('Seconds of hand work: the first 12 of 14');
    expect(seconds?.rows).toHaveLength(12);
  });
});

describe('what is assumed', () => {
  it('is what the plans set differently: numbers, and entries that stand ready for a plan', () => {
    expect(decisions(beside()).map(({ name, values }) => `${name} ${values.join(' | ')}`)).toContain('Kept 95 | 97');
  });

  it('is the guesses that turn the answer, with range, and source or note', () => {
    const { model } = beside();
    const subject = { result: idOf(model, 'margin'), plan: 1, against: undefined };
    const found = readSwitches(done(switchingSearch, model.sheet, { subject, target: '90000' }).found, model.cells);
    const told = guesses(found, model, 1, format);
    expect(told.map(({ cell, value, range, from }) => [cell.name, value, range, from])).toEqual([
      ['price', '0.5', '0.4 to 0.6', 'a guess'],
    ]);
  });
});
