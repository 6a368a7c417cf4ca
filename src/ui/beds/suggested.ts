import type { Schedule, Stage } from '../../trade/schedule';
import type { Change, Suggestion } from '../../trade/suggestions';
import { plainly, say, type Phrase } from '../finding/phrase';
import type { Format } from '../format';
import { days, shown, whole } from './counts';

/** Of one kind, and in all. */
const mostOfAKind = 2;
const mostShown = 5;

/** The best few, not all of one kind. */
export function fewSuggestions(found: readonly Suggestion[]): Suggestion[] {
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

function changeTold(change: Change, schedule: Schedule, format: Format): Phrase {
  const number = (value: Schedule['interval']): string => shown(value, 2, format);
  switch (change.kind) {
    case 'interval':
      return say`Sow every ${days(change.to, format)} instead of ${plainly(number(schedule.interval))}`;
    case 'density': {
      const { density } = stageOf(schedule, change.stage);
      const stage = plainly(`stage ${change.stage}`);
      return say`Set ${number(change.to)} plants on a board of ${stage} instead of ${plainly(number(density))}`;
    }
    case 'time': {
      const { time } = stageOf(schedule, change.stage);
      const stage = plainly(`stage ${change.stage}`);
      return say`Keep plants ${days(change.to, format)} in ${stage} instead of ${plainly(number(time))}`;
    }
    case 'shift': {
      const [longer, shorter] = [plainly(`stage ${change.stage}`), plainly(`stage ${change.from}`)];
      const [to, left] = [days(change.to, format), days(change.left, format)];
      return say`Keep plants ${to} in ${longer} and ${left} in ${shorter}, as long in all as now`;
    }
  }
}

/** `Sow every 2.5 days instead of 2: 4,700 plants a week, 66 more.` */
export function suggestionTold(
  { change, finishedPerWeek, gain }: Suggestion, schedule: Schedule, format: Format,
): Phrase {
  const what = changeTold(change, schedule, format);
  const more = whole(gain, format) === '0' ? shown(gain, 1, format) : whole(gain, format);
  return say`${what}: ${plainly(whole(finishedPerWeek, format))} plants a week, ${more} more.`;
}
