import { decimal } from '../core/number';
import { toDecimals } from '../core/rounded';
import type { Calendar } from './calendar';
import { tasks, type CalendarEvent, type Task } from './calendarEvents';
import { isoDate } from './civilDate';
import type { DayEvent } from './iCalendar';
import { hoursOf, type WorkStep } from './labour';
import { boardsOf, countOf, type CropNames } from './stageNames';

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

/** An entry of a table for other programs: text, or a number as a decimal string. */
export type WorkEntry = string | { readonly number: string };

const daysPerWeek = 7;
const hourDigits = 2;
const verbs: Readonly<Record<Task, string>> = { harvest: 'Harvest', wash: 'Wash', move: 'Move', sow: 'Sow' };

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

/** A task in words: `Move 58 plants from nursery boards onto 3 finishing boards`. */
export function taskInWords({ task, from, to, plants, boards }: WorkTask, names: CropNames): string {
  const filled = countOf(boards, boardsOf(names, to ?? 0));
  const emptied = boardsOf(names, from ?? 0);
  const what = countOf(plants, names.plant);
  switch (task) {
    case 'wash':
      return `${verbs.wash} ${countOf(boards, emptied)}`;
    case 'harvest':
      return `${verbs.harvest} ${what} off ${countOf(boards, emptied)}`;
    case 'move':
      return `${verbs.move} ${what} from ${emptied.many} onto ${filled}`;
    case 'sow':
      return `${verbs.sow} ${what} on ${filled}`;
  }
}

/** Hours to hundredths, for showing. */
function shownHours(hours: number): string {
  return toDecimals(decimal(hours), hourDigits);
}

/**
 * The work list as rows of a table with a header, for `exportTable`. Stages are given by name; washing has no plants.
 */
export function workTable(list: readonly WorkTask[], { stages }: CropNames): WorkEntry[][] {
  const number = (n: number): WorkEntry => ({ number: String(n) });
  const place = (stage: number | undefined): string => (stage === undefined ? '' : (stages[stage] ?? ''));
  const rows = list.map(({ day, task, from, to, plants, boards, hours }): WorkEntry[] => [
    isoDate(day),
    verbs[task].toLowerCase(),
    place(from),
    place(to),
    task === 'wash' ? '' : number(plants),
    number(boards),
    { number: shownHours(hours) },
  ]);
  return [['date', 'task', 'from', 'to', 'plants', 'boards', 'hours'], ...rows];
}

/**
 * The work list as events of a calendar file, one for each task, for `iCalendar`.
 * @param uidOf gives a task an identifier that is the same each time the file is written
 */
export function workEvents(list: readonly WorkTask[], uidOf: (task: WorkTask) => string, names: CropNames): DayEvent[] {
  return list.map((task) => ({
    uid: uidOf(task),
    day: task.day,
    summary: taskInWords(task, names),
    description: task.hours > 0 ? `${shownHours(task.hours)} hours` : '',
  }));
}
