import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../../src/files/readModel';
import { evaluatePlan } from '../../../../src/model/values';
import { calendar } from '../../../../src/trade/calendar';
import { calendarWeeks, paidHours, type CalendarWeek, type Staff } from '../../../../src/trade/labour';
import { planScheduleOf } from '../../../../src/present/beds/planSchedule';
import { hoursOfYear, paidHoursSentence } from '../../../../src/present/beds/year/paidHours';
import { stepAllowance, timeEntries, usualTimes, workSteps } from '../../../../src/present/beds/work/stepTimes';
import { idOf, planOf } from '../../../model/table';
import { newYear } from '../../../trade/running';
import { english, read } from '../given';

const hire: Staff = { spare: 10, guaranteed: 20, person: 25, beyond: 'overtime' };
const week = (needed: number, staff: Staff): CalendarWeek => ({
  firstDay: 0,
  finished: 0,
  hours: { sow: needed, move: 0, harvest: 0, wash: 0 },
  needed,
  paid: paidHours(needed, staff),
});
const said = (needed: readonly number[], staff: Staff): string =>
  read(
    paidHoursSentence(
      needed.map((hours) => week(hours, staff)),
      staff,
      english,
    ),
  );

describe('hours paid in a year', () => {
  // Beyond 10: 0, 15, 30 h. Paid 20, 20, 30; idle 20, 5, 0; overtime beyond 25: 5.
  it('tell what of the guarantee is not used, and who does the work', () => {
    expect(said([5, 25, 40], hire)).toBe(
      'In 2 of 3 weeks the 20 guaranteed hours are not all used: 25 hours idle in all. ' +
        'The work of 3 weeks takes 70 hours; the present staff give up to 10 a week, a hire is paid 70 hours, 5 of them as overtime.',
    );
    expect(hoursOfYear([5, 25, 40].map((hours) => week(hours, hire)))).toEqual({
      needed: 70,
      paid: 70,
      idle: 25,
      overtime: 5,
    });
  });

  it('tell of a guarantee that is always used', () => {
    expect(said([30, 31], hire)).toMatch(/^The 20 guaranteed hours are used up in every week\./);
  });

  it('tell of staff who need no hire', () => {
    expect(said([5, 8], { ...hire, guaranteed: 0 })).toBe(
      'The work of 2 weeks takes 13 hours; the present staff give up to 10 a week, which is enough in every week.',
    );
  });

  it('tell of a hire who does it all', () => {
    expect(said([5, 8], { ...hire, spare: 0, guaranteed: 0 })).toBe(
      'The work of 2 weeks takes 13 hours; a hire is paid 13 hours.',
    );
  });
});

// The model's own rule, by formulas on an average week, against the calendar's, week by week in steady running.
it('in steady running a hire is paid as much as the model says', () => {
  const { model } = readModelText(readFileSync('models/transplant-hire.csv', 'utf8'));
  const values = evaluatePlan(planOf(model, 'Nursery first'));
  const planSchedule = planScheduleOf(model.cells, values)!;
  const times = timeEntries(model.cells, planSchedule.parts.get('boards'));
  const steps = workSteps(times, usualTimes(times, 2), stepAllowance(model.cells), values);
  const year = calendar({ schedule: planSchedule.schedule, season: planSchedule.season, start: newYear });
  const staff: Staff = { spare: 48, guaranteed: 20, person: 35, beyond: 'overtime' };
  const steady = calendarWeeks(year, steps, staff)
    .slice(20, 40)
    .map(({ paid }) => paid.paid);
  const mean = steady.reduce((sum, paid) => sum + paid, 0) / steady.length;
  expect(mean / values.numbers[idOf(model, 'hire_hours')]!.toNumber()).toBeCloseTo(1, 1);
});
