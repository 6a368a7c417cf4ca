import { evenSeason } from '../../../src/trade/season';
import { scheduleView, type ScheduleView } from '../../../src/present/beds/stages/schedules';
import type { PlanSchedule } from '../../../src/present/beds/planSchedule';
import { createDates } from '../../../src/present/text/dates';
import { textOf, type Phrase } from '../../../src/present/text/phrase';
import { createFormat, space } from '../../../src/present/text/numberFormat';
import { namesOf } from '../../../src/present/beds/names';
import { crop } from '../../trade/crop';

export const english = createFormat('en-GB');
export const englishDates = createDates('en-GB');
/** What two stages are called where no label names them: nursery and finishing. */
export const names = namesOf(new Map(), 2);

/** A schedule written as in the tests of trade, asked about without any entries. */
export function askedOn(text: string, turnaround: number | string = 0): PlanSchedule {
  const schedule = crop(text, turnaround);
  const parts = new Map();
  const called = namesOf(parts, schedule.stages.length);
  const numbers = JSON.stringify([schedule, evenSeason]);
  return { cells: [], parts, schedule, season: evenSeason, names: called, numbers };
}

export function lookOn(text: string, turnaround: number | string = 0): ScheduleView {
  return scheduleView(askedOn(text, turnaround));
}

/** A phrase with plain spaces. */
export function read(phrase: Phrase): string {
  return textOf(phrase).replaceAll(space, ' ');
}
