import type { Calendar } from './calendar';
import { tasks, type CalendarEvent, type Task } from './calendarEvents';
import { hoursOf, type WorkStep } from './labour';
import { daysPerWeek } from './week';

/** One kind of work on one day, for all its batches together. */
export interface WorkTask {
  /** The day's number; see `isoDate`. */
  readonly day: number;
  readonly task: Task;
  /** Index of the stage that plants or boards leave. */
  readonly from: number | undefined;
  /** Index of the stage that plants enter. */
  readonly to: number | undefined;
  /** 0 for washing. */
  readonly plants: number;
  /** Filled by sowing and moving, emptied by harvest, washed. */
  readonly boards: number;
  readonly hours: number;
}

function isSameTask(task: WorkTask, event: CalendarEvent, day: number): boolean {
  return task.day === day && task.task === event.task && task.from === event.from && task.to === event.to;
}

function inOrder(a: WorkTask, b: WorkTask): number {
  return a.day - b.day || tasks.indexOf(a.task) - tasks.indexOf(b.task) || (a.from ?? -1) - (b.from ?? -1);
}

/**
 * The tasks of some days of a calendar, in the order of a working day: boards are emptied and washed before they are
 * filled.
 * @param from the number of the first day
 */
export function workList(calendar: Calendar, steps: readonly WorkStep[], from: number, days = daysPerWeek): WorkTask[] {
  const list: WorkTask[] = [];
  for (const event of calendar.events) {
    const day = calendar.start + event.day;
    if (day < from || day >= from + days) continue;
    const at = list.findIndex((task) => isSameTask(task, event, day));
    const { task, from: left, to } = event;
    const before = list[at] ?? { plants: 0, boards: 0, hours: 0 };
    const sum = {
      plants: before.plants + event.plants,
      boards: before.boards + event.boards,
      hours: before.hours + hoursOf(event, steps),
    };
    list.splice(at < 0 ? list.length : at, 1, { day, task, from: left, to, ...sum });
  }
  return list.sort(inOrder);
}
