import { wording } from '../../../language/wording';
import type { Calendar } from '../../../trade/calendar';
import { isoDate } from '../../../trade/civilDate';
import type { WorkTask } from '../../../trade/workList';
import { boardsOf, stageBeside, type CropNames } from '../stageNames';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import { counted, hours } from '../../text/quantities';
import type { Dates } from '../../text/dates';
import { daysPerWeek } from '../../../trade/week';

/** The first week, counted from the calendar's first day, in which all stages are filled; else the last whole week. */
export function steadyWeek({ start, days, batches }: Calendar): number {
  const filled = batches[0]?.stays.at(-1)?.freed ?? 0;
  const harvested = batches[0]?.harvested;
  const last = Math.max(0, Math.floor(days / daysPerWeek) - 1);
  const week = harvested === undefined ? last : Math.ceil(filled / daysPerWeek);
  return start + Math.min(last, week) * daysPerWeek;
}

/** Whether a week from some day falls in a calendar. */
export function isWithin({ start, days }: Calendar, day: number): boolean {
  return day >= start && day + daysPerWeek <= start + days;
}

/** The tasks of one day. */
export interface WorkDay {
  readonly day: number;
  readonly tasks: readonly WorkTask[];
}

/** A work list day by day; days without work are left out. */
export function byDay(list: readonly WorkTask[]): WorkDay[] {
  const days = new Map<number, WorkTask[]>();
  for (const task of list) days.set(task.day, [...(days.get(task.day) ?? []), task]);
  return [...days].map(([day, tasks]) => ({ day, tasks }));
}

/** What is to be done, without its counts: `Move from nursery to finishing boards`. */
export function taskText({ task, from, to }: WorkTask, names: CropNames): string {
  const emptied = boardsOf(names, from ?? 0).many;
  const filled = boardsOf(names, to ?? 0).many;
  switch (task) {
    case 'wash':
      return wording`Wash ${emptied}`;
    case 'harvest':
      return wording`Harvest off ${emptied}`;
    case 'move':
      return wording`Move from ${stageBeside(names, from ?? 0)} to ${stageBeside(names, to ?? 0)} ${names.board.many}`;
    case 'sow':
      return wording`Sow on ${filled}`;
  }
}

function sum(list: readonly WorkTask[], task: WorkTask['task'], what: 'plants' | 'boards'): number {
  return list.filter((each) => each.task === task).reduce((total, each) => total + each[what], 0);
}

export function hoursIn(list: readonly WorkTask[]): number {
  return list.reduce((total, each) => total + each.hours, 0);
}

/** A week's work in one sentence. */
export function weekSentence(
  list: readonly WorkTask[],
  from: number,
  counts: boolean,
  names: CropNames,
  format: Format,
  dates: Dates,
): Phrase {
  const first = dates.long(from);
  if (list.length === 0) return say`In the week from ${first} there is nothing to do.`;
  const plants = (task: 'sow' | 'move' | 'harvest'): string => counted(sum(list, task, 'plants'), names.plant, format);
  const washed = counted(sum(list, 'wash', 'boards'), names.board, format);
  const work = [
    { task: 'sow', said: say`sow ${plants('sow')}` },
    { task: 'move', said: say`move ${plants('move')}` },
    { task: 'harvest', said: say`harvest ${plants('harvest')}` },
    { task: 'wash', said: say`wash ${washed}` },
  ] as const;
  const done = work
    .filter(({ task }) => sum(list, task, task === 'wash' ? 'boards' : 'plants') > 0)
    .flatMap(({ said }, i) => (i === 0 ? said : [...plainly(', '), ...said]));
  const takes = counts ? say`That takes ${hours(hoursIn(list), format)}.` : plainly(wording`No times are counted.`);
  return sentences(say`In the week from ${first}: ${done}.`, takes);
}

/** An identifier for a task, the same each time that the same plan of the same file is written. */
export function uidOf(task: WorkTask, file: string, plan: string): string {
  const part = (stage: number | undefined): string => (stage === undefined ? '0' : String(stage + 1));
  const key = [isoDate(task.day), task.task, part(task.from), part(task.to), plan, file];
  return `${key.map(encodeURIComponent).join('.')}@raftmargin.invalid`;
}

/** A file's name for the week's work. */
export function fileName(from: number, ending: 'csv' | 'ics'): string {
  return `work-from-${isoDate(from)}.${ending}`;
}
