import { ceilFloat } from '../core/float';
import type { Calendar } from './calendar';
import { tasks, type CalendarEvent, type Task } from './calendarEvents';
import { daysPerWeek } from './week';

/** The standard time of a step, allowance included. Several steps of one task add up. */
export interface WorkStep {
  readonly task: Task;
  readonly seconds: number;
  readonly per: 'plant' | 'board';
  /**
   * The only stage for which it counts, by index: the stage entered by sowing and moving, left by harvest and washing.
   */
  readonly stage?: number;
}

/** The people who can do the work, in hours a week. */
export interface Staff {
  /** Hours of the present staff that are paid anyway and available for these tasks. */
  readonly spare: number;
  /** Hours guaranteed to a hire. */
  readonly guaranteed: number;
  /** Hours of one person at ordinary pay. */
  readonly person: number;
  /** What covers hours beyond one person's. */
  readonly beyond: 'overtime' | 'second hire';
}

/** The hours of one week. */
export interface PaidHours {
  /** Hours needed that the present staff cannot cover. */
  readonly beyondStaff: number;
  /** Hours paid to hires: the hours beyond the present staff or the hours guaranteed, whichever are more. */
  readonly paid: number;
  /** Of the hours paid, those at overtime pay. */
  readonly overtime: number;
  /** Hours paid to hires that are not needed. */
  readonly idle: number;
  /** Number of hires; 0 where no hour is paid. */
  readonly hires: number;
}

/** A week of the calendar: seven days from its first day on. */
export interface CalendarWeek {
  readonly firstDay: number;
  /** Plants kept at harvest, not rounded. */
  readonly finished: number;
  /** Hours by task, and their sum. */
  readonly hours: Readonly<Record<Task, number>>;
  readonly needed: number;
  readonly paid: PaidHours;
}

const secondsPerHour = 3600;

/** Hours that one event takes. Seconds are paid for every plant that enters a step, also for those lost later. */
export function hoursOf(event: CalendarEvent, steps: readonly WorkStep[]): number {
  const place = event.to ?? event.from;
  const own = steps.filter(({ task, stage }) => task === event.task && (stage === undefined || stage === place));
  const seconds = own.reduce(
    (sum, step) => sum + step.seconds * (step.per === 'plant' ? event.plants : event.boards),
    0,
  );
  return seconds / secondsPerHour;
}

/**
 * Hours paid in a week. Up to one person's hours: the hours beyond the present staff or the hours guaranteed, whichever
 * are more. Beyond that: overtime, or more hires, each with the hours guaranteed.
 */
export function paidHours(needed: number, { spare, guaranteed, person, beyond }: Staff): PaidHours {
  const beyondStaff = Math.max(0, needed - spare);
  const wanted = beyond === 'second hire' && person > 0 ? Math.max(1, ceilFloat(beyondStaff / person)) : 1;
  const paid = Math.max(beyondStaff, wanted * guaranteed);
  const overtime = beyond === 'overtime' ? Math.max(0, beyondStaff - person) : 0;
  return { beyondStaff, paid, overtime, idle: paid - beyondStaff, hires: paid > 0 ? wanted : 0 };
}

/**
 * Harvest and hours of a calendar by week. Days after its last whole week are left out: a week's work may fall on one
 * of them, the staff's hours never do.
 */
export function calendarWeeks(calendar: Calendar, steps: readonly WorkStep[], staff: Staff): CalendarWeek[] {
  const count = Math.floor(calendar.days / daysPerWeek);
  const hours = Array.from({ length: count }, () => ({ harvest: 0, wash: 0, move: 0, sow: 0 }));
  const finished = Array.from({ length: count }, () => 0);
  for (const event of calendar.events) {
    const week = Math.floor(event.day / daysPerWeek);
    if (week >= count) break;
    hours[week]![event.task] += hoursOf(event, steps);
    if (event.task === 'harvest') finished[week]! += calendar.batches[event.batch - 1]?.finished ?? 0;
  }
  return hours.map((own, week) => {
    const needed = tasks.reduce((sum, task) => sum + own[task], 0);
    const firstDay = week * daysPerWeek;
    return { firstDay, finished: finished[week]!, hours: own, needed, paid: paidHours(needed, staff) };
  });
}
