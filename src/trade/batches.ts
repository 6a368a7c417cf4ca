import { exact } from '../core/exact';
import { decimal, type Decimal } from '../core/number';
import { civilDate, dayOfYear, daysPerYear } from './civilDate';
import type { Schedule, Stage } from './schedule';
import { closedDays, type Season } from './season';

/** A batch's time in one stage. Instants are days from the start of the calendar's first day. */
export interface Stay {
  /** Index among the schedule's stages. */
  readonly stage: number;
  readonly from: number;
  /** When its plants leave. */
  readonly to: number;
  /** When its boards can be used again: `to` and the turnaround. */
  readonly freed: number;
  /** Days of the stay that the batch only waited for a closed time to end. */
  readonly waited: number;
  /** Plants entering, rounded up; each holds its place to `to`. */
  readonly plants: number;
  readonly boards: number;
}

/** A batch from its sowing to its harvest, or to the end of the calendar. */
export interface SownBatch {
  /** From 1, in order of sowing. */
  readonly number: number;
  readonly sown: number;
  /** Its stays in order, without those that would begin after the calendar's end. */
  readonly stays: readonly Stay[];
  /** When it was harvested; undefined where that is not before the calendar ends. */
  readonly harvested: number | undefined;
  /** Plants left after its stays, not rounded: the batch × their survivals. */
  readonly finished: number;
  /** The same rounded up. */
  readonly kept: number;
}

/** What is left of a batch after some stages. */
interface Survivors {
  readonly share: Decimal;
  /** Plants, rounded up. */
  readonly plants: number;
  /** Computed once for each stage: the boards that entering it takes, and what is left after it. */
  readonly boards: (number | undefined)[];
  readonly after: (Survivors | undefined)[];
}

const one = decimal(1);
/** Instants closer than this many days are one instant: far below a second, far above rounding errors. */
const instantsPerDay = 1e9;

/** An instant rounded so that it is the same number whichever way it was computed. */
export function instant(days: number): number {
  return Math.round(days * instantsPerDay) / instantsPerDay;
}

/** Follows batches of one size through the stages of a sound schedule. */
export class Growing {
  private readonly root: Survivors;
  private readonly closed: readonly boolean[];
  private readonly anyClosed: boolean;
  private readonly turnaround: number;
  private readonly times: readonly number[];

  /** @param start the day number of the calendar's first day; @param days its length */
  constructor(
    private readonly schedule: Schedule,
    private readonly season: Season,
    private readonly batch: number,
    private readonly start: number,
    private readonly days: number,
  ) {
    this.root = this.survivors(one);
    this.closed = closedDays(season.closed);
    this.anyClosed = this.closed.includes(true);
    this.turnaround = schedule.turnaround.toNumber();
    this.times = schedule.stages.map(({ time }) => time.toNumber());
  }

  /** Whether nothing is sown, moved or harvested on a day of the calendar. */
  isClosed(day: number): boolean {
    return this.anyClosed && this.closed[dayOfYear(civilDate(this.start + day))] === true;
  }

  /** The first day of the calendar with that number in the year. */
  firstDay(ofYear: number): number {
    let day = 0;
    while (day <= daysPerYear && dayOfYear(civilDate(this.start + day)) !== ofYear) day += 1;
    return day;
  }

  /** Follows one batch, from its sowing to its harvest or to the end of the calendar. */
  grow(number: number, sown: number): SownBatch {
    const stays: Stay[] = [];
    let now = sown;
    let alive = this.root;
    for (let stage = 0; stage < this.times.length && instant(now) < this.days; stage += 1) {
      const time = this.timeIn(stage, now);
      if (time === 0) continue;
      const stay = this.stay(stage, now, time, alive);
      stays.push(stay);
      now = stay.waited > 0 ? stay.to : now + time;
      alive = this.after(alive, stage);
    }
    const isThrough = instant(now) < this.days && stays.length > 0;
    const harvested = isThrough ? instant(now) : undefined;
    const finished = alive.share.times(this.batch).toNumber();
    return { number, sown: instant(sown), stays, harvested, finished, kept: alive.plants };
  }

  private stay(stage: number, from: number, time: number, alive: Survivors): Stay {
    const ready = instant(from + time);
    const to = this.opening(ready);
    const boards = (alive.boards[stage] ??= this.boardsOf(stage, alive.plants));
    const freed = instant(to + this.turnaround);
    return { stage, from: instant(from), to, freed, waited: to - ready, plants: alive.plants, boards };
  }

  /** Days in a stage for a batch that enters it at an instant. */
  private timeIn(stage: number, at: number): number {
    const byMonth = this.season.monthTimes[stage];
    if (byMonth === undefined) return this.times[stage] ?? 0;
    const { month } = civilDate(this.start + Math.floor(instant(at)));
    const time = byMonth[month - 1];
    return time?.gte(0) === true ? time.toNumber() : (this.times[stage] ?? 0);
  }

  /** The instant itself, or the start of the first open day after it; none within a year where all days are closed. */
  private opening(at: number): number {
    let day = Math.floor(at);
    if (!this.isClosed(day)) return at;
    for (let tries = 0; tries <= daysPerYear + 1; tries += 1) {
      day += 1;
      if (!this.isClosed(day)) return day;
    }
    return Infinity;
  }

  private survivors(share: Decimal): Survivors {
    const plants = exact.ceil(share.times(this.batch)).toNumber();
    return { share, plants, boards: [], after: [] };
  }

  private after(alive: Survivors, stage: number): Survivors {
    const survival = (this.schedule.stages[stage] as Stage).survival;
    return (alive.after[stage] ??= this.survivors(alive.share.times(survival)));
  }

  private boardsOf(stage: number, plants: number): number {
    const { density } = this.schedule.stages[stage] as Stage;
    return exact.ceil(decimal(plants).dividedBy(density)).toNumber();
  }
}
