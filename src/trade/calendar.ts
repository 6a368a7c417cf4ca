import { exact } from '../core/exact';
import { compareFloat } from '../core/float';
import { decimal, type Decimal } from '../core/number';
import type { Problem } from '../core/problem';
import type { CropParts } from '../model/cropParts';
import { Growing, instant, type SownBatch } from './batches';
import { eventsIn, type CalendarEvent } from './calendarEvents';
import { batchFaults, lengthFaults, noSowing, smallerBatch } from './calendarFaults';
import { dayPictures, type DayPicture } from './dayPictures';
import { isRunning, wholeBoards, type Schedule } from './schedule';
import { scheduleFaults, scheduleNotices, seasonFaults } from './scheduleFaults';
import { evenSeason, isDayOfYear, type Season } from './season';
import { isSound, loadsOf, mostBoards, together } from './steady';
import { daysPerWeek, wholeWeeks } from './week';

/** The settings of a calendar. */
export interface CalendarQuestion {
  readonly schedule: Schedule;
  readonly season?: Season;
  /** The day number of its first day; see `readIsoDate`. */
  readonly start: number;
  /** Its length, a year's whole weeks where it is left out. */
  readonly days?: number;
  /** Plants sown each time, the largest batch on whole boards where it is left out. */
  readonly batch?: Decimal | undefined;
  /** The cells of the schedule, so that faults name them. */
  readonly parts?: CropParts;
}

/** A year in whole boards, from an empty bed. Days count from 0, the first. */
export interface Calendar {
  readonly start: number;
  readonly days: number;
  /** Plants sown each time; 0 where no batch can be sown. */
  readonly batch: number;
  readonly batches: readonly SownBatch[];
  /** Sowing days left out because they are in a closed time. */
  readonly skipped: readonly number[];
  readonly events: readonly CalendarEvent[];
  readonly pictures: readonly DayPicture[];
  /** Days on which more boards are in use than there are. */
  readonly overFull: readonly number[];
  /** For each stage, the days on which it uses more boards than are set for it by hand; empty where none are set. */
  readonly overFullStages: readonly (readonly number[])[];
  readonly faults: readonly Problem[];
  readonly notices: readonly Problem[];
}

/**
 * The schedule with the time of a month in each stage that is skipped in other months, so that no stage is left out.
 */
function withAllStages(schedule: Schedule, { monthTimes }: Season): Schedule {
  const stages = schedule.stages.map((stage, i) => {
    const inSomeMonth = isRunning(stage) ? undefined : monthTimes[i]?.find((time) => time?.gt(0) === true);
    return inSomeMonth ? { ...stage, time: inSomeMonth } : stage;
  });
  return { ...schedule, stages };
}

/**
 * The batch of a calendar for which none is given: the largest on whole boards. With a turnaround, the boards that a
 * batch has left are out of use while it is already in the next stage. `whole_batch` does not count that, so this batch
 * may be smaller.
 */
export function calendarBatch(schedule: Schedule): number {
  const largest = wholeBoards(schedule).batch.toNumber();
  if (!isSound(schedule) || !(largest > 0)) return 0;
  if (schedule.turnaround.isZero()) return largest;
  const standing = together(schedule, 'beside the next');
  const fits = (batch: number): boolean =>
    exact.compare(decimal(mostBoards(standing, loadsOf(schedule, batch))), schedule.boards) <= 0;
  let [low, high] = [0, largest + 1];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

interface Sowings {
  readonly batches: SownBatch[];
  readonly skipped: number[];
}

function sowings(growing: Growing, { interval }: Schedule, { firstSowing }: Season, days: number): Sowings {
  const every = interval.toNumber();
  const first = firstSowing !== undefined && isDayOfYear(firstSowing) ? growing.firstDay(firstSowing) : 0;
  const batches: SownBatch[] = [];
  const skipped: number[] = [];
  for (let k = 0; instant(first + k * every) < days; k += 1) {
    const day = Math.floor(instant(first + k * every));
    if (growing.isClosed(day)) skipped.push(day);
    else batches.push(growing.grow(batches.length + 1, first + k * every));
  }
  return { batches, skipped };
}

function daysOver(pictures: readonly DayPicture[], used: (picture: DayPicture) => number, limit: number): number[] {
  return pictures.flatMap((picture, day) => (compareFloat(used(picture), limit) > 0 ? [day] : []));
}

type Simulated = Omit<Calendar, 'start' | 'days' | 'batch' | 'faults' | 'notices'>;

function nothing({ stages }: Schedule): Simulated {
  return { batches: [], skipped: [], events: [], pictures: [], overFull: [], overFullStages: stages.map(() => []) };
}

function simulate(schedule: Schedule, season: Season, batch: number, start: number, days: number): Simulated {
  const growing = new Growing(schedule, season, batch, start, days);
  const { batches, skipped } = sowings(growing, schedule, season, days);
  const pictures = dayPictures(batches, days, schedule.stages.length);
  const overFullStages = schedule.stages.map(({ boards }, i) =>
    boards === undefined ? [] : daysOver(pictures, ({ most }) => most[i] ?? 0, boards.toNumber()),
  );
  const overFull = daysOver(pictures, ({ inUse }) => inUse, schedule.boards.toNumber());
  return { batches, skipped, events: eventsIn(batches, days), pictures, overFull, overFullStages };
}

/**
 * Simulates a crop schedule batch by batch, from an empty bed.
 *
 * Batches are sown every interval from the first sowing on. A batch stays in each stage for the stage's time, or for
 * the one of the month in which it enters, and moves on at once; its boards are out of use for the turnaround after
 * that. In a closed time nothing is sown, moved or harvested: a sowing that falls in it is left out, the later ones
 * keep to their days; a batch whose move or harvest falls in it waits where it stands, on its boards, until the closed
 * time has ended, goes on at the start of the first open day, and stays in the next stage for its full time from then.
 * A turnaround goes on in a closed time. Losses are counted from the batch: n × Π s of the stages stood in, rounded up.
 * A stage that a batch meets with time 0 is skipped, its survival with it. Nothing stops a batch that finds no free
 * board: such days are over-full.
 *
 * Instants are followed in double precision, not days; the day pictures come after. Faults are data, and what can be
 * computed is: a schedule with a fault in it gives no batches, one with a faulty season goes on without that part.
 */
export function calendar(question: CalendarQuestion): Calendar {
  const { schedule, season = evenSeason, start, days = wholeWeeks * daysPerWeek, parts } = question;
  const full = withAllStages(schedule, season);
  const asked = [...lengthFaults(schedule, days), ...batchFaults(question.batch)];
  const faults = [...scheduleFaults(full, parts), ...seasonFaults(season, parts), ...asked];
  const notices = scheduleNotices(schedule, season, parts);
  const usable = asked.length === 0 && isSound(full);
  const batch = usable ? (question.batch?.toNumber() ?? calendarBatch(isSound(schedule) ? schedule : full)) : 0;
  const found = batch > 0 ? simulate(schedule, season, batch, start, days) : nothing(schedule);
  if (usable && question.batch === undefined && !schedule.turnaround.isZero()) {
    notices.push(...smallerBatch(batch, wholeBoards(schedule).batch));
  }
  if (batch > 0 && found.batches.length === 0) faults.push(noSowing(found.skipped.length, days));
  return { start, days, batch, ...found, faults, notices };
}
