import type { Schedule, Stage } from '../../../trade/schedule';
import type { Change, Suggestion } from '../../../trade/suggestions';
import { boardsOf } from '../stageNames';
import { plainly, say, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import type { PlanSchedule } from '../planSchedule';
import { days, shown, whole } from '../../text/quantities';
import { boardsIn } from '../names';

/** At most so many suggestions of one kind, and in all. */
const mostOfAKind = 2;
const mostShown = 5;

/** The best few, not all of one kind. */
export function fewSuggestions<T extends Pick<Suggestion, 'change'>>(found: readonly T[]): T[] {
  const taken = new Map<Change['kind'], number>();
  const few = found.filter(({ change: { kind } }) => {
    const before = taken.get(kind) ?? 0;
    taken.set(kind, before + 1);
    return before < mostOfAKind;
  });
  return few.slice(0, mostShown);
}

function stageOf({ stages }: Schedule, number: number): Stage {
  const stage = stages.find((each) => each.number === number);
  if (stage === undefined) throw new Error(`A suggestion is about stage ${number}, which the schedule has not.`);
  return stage;
}

/** The part of the crop schedule that a change is about. */
export function partOf(change: Change): string {
  if (change.kind === 'interval') return 'interval';
  return `stage ${change.stage} ${change.kind === 'density' ? 'density' : 'time'}`;
}

function changeText(change: Change, { schedule, names }: PlanSchedule, format: Format): Phrase {
  const number = (value: Schedule['interval']): string => shown(value, 2, format);
  const kept = plainly(names.plant.many);
  switch (change.kind) {
    case 'interval':
      return say`Sow every ${days(change.to, format)} instead of ${plainly(number(schedule.interval))}`;
    case 'density': {
      const { density } = stageOf(schedule, change.stage);
      const board = plainly(boardsOf(names, change.stage - 1).one);
      return say`Set ${number(change.to)} ${kept} on each ${board} instead of ${plainly(number(density))}`;
    }
    case 'time': {
      const { time } = stageOf(schedule, change.stage);
      const boards = boardsIn(names, [change.stage]);
      return say`Keep ${kept} ${days(change.to, format)} on ${boards} instead of ${plainly(number(time))}`;
    }
    case 'shift': {
      const [longer, shorter] = [boardsIn(names, [change.stage]), boardsIn(names, [change.from])];
      const [to, left] = [days(change.to, format), days(change.left, format)];
      return say`Keep ${kept} ${to} on ${longer} and ${left} on ${shorter}, as long in all as now`;
    }
  }
}

/**
 * `Sow every 2.5 days instead of 2: 4,700 plants a week, 66 more.`
 * @param beyond an addition that begins with a comma; blank for none
 */
export function suggestionSentence(
  { change, finishedPerWeek, gain }: Suggestion,
  planSchedule: PlanSchedule,
  beyond: Phrase,
  format: Format,
): Phrase {
  const what = changeText(change, planSchedule, format);
  const more = whole(gain, format) === '0' ? shown(gain, 1, format) : whole(gain, format);
  return say`${what}: ${plainly(`${whole(finishedPerWeek, format)} ${planSchedule.names.plant.many}`)} a week, ${more} more${beyond}.`;
}
