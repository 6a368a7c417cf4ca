import { wording } from '../../../language/wording';
import { decimal } from '../../../core/number';
import { toDecimals } from '../../../core/rounded';
import type { DayEvent } from '../../../trade/iCalendar';
import type { WorkTask } from '../../../trade/workList';
import type { Noun } from '../../text/noun';
import { boardsOf, type CropNames } from '../stageNames';

const hourDigits = 2;

/** `1 plant`, `20 plants`, the number as any program reads it. */
function countOf(n: number, noun: Noun): string {
  return `${n} ${n === 1 ? noun.one : noun.many}`;
}

/** A task in words: `Move 58 plants from nursery boards onto 3 finishing boards`. */
export function taskInWords({ task, from, to, plants, boards }: WorkTask, names: CropNames): string {
  const filled = countOf(boards, boardsOf(names, to ?? 0));
  const emptied = boardsOf(names, from ?? 0);
  const what = countOf(plants, names.plant);
  switch (task) {
    case 'wash':
      return wording`Wash ${countOf(boards, emptied)}`;
    case 'harvest':
      return wording`Harvest ${what} off ${countOf(boards, emptied)}`;
    case 'move':
      return wording`Move ${what} from ${emptied.many} onto ${filled}`;
    case 'sow':
      return wording`Sow ${what} on ${filled}`;
  }
}

/** Hours to hundredths, for showing. */
function shownHours(hours: number): string {
  return toDecimals(decimal(hours), hourDigits);
}

/**
 * The work list as events of a calendar file, one a task; for `iCalendar`.
 * @param uidOf names a task for all time, the same at every writing
 */
export function workEvents(list: readonly WorkTask[], uidOf: (task: WorkTask) => string, names: CropNames): DayEvent[] {
  return list.map((task) => ({
    uid: uidOf(task),
    day: task.day,
    summary: taskInWords(task, names),
    description: task.hours > 0 ? wording`${shownHours(task.hours)} hours` : '',
  }));
}
