import { wording } from '../language/wording';
import { decimal, numberToText, sum, type Decimal } from '../core/number';
import { problem, type Problem } from '../core/problem';
import { toSignificant } from '../core/rounded';
import type { CropParts } from '../model/cropParts';
import { boardTime, isRunning, type Schedule, type Stage } from './schedule';
import { closedLength, isDayOfYear, type ClosedTime, type Season } from './season';
import { boardsFor, isSound } from './steady';

/** From this number of boards on, a digit too many is more likely than so large a bed. */
const manyBoards = 1_000_000;
const nothingTagged: CropParts = new Map();
const shownDigits = 8;

/** Makes a fault of a part of the crop schedule, placed at the cell that is tagged with it. */
type Teller = (part: string, code: string, what: string, shown: string, fix: string) => Problem;

function teller(parts: CropParts): Teller {
  return (part, code, what, shown, fix) => {
    const cell = parts.get(part);
    const where = { row: cell?.row ?? 0, column: 'crop', cell: cell?.name ?? '', text: shown };
    return problem(code, `${what}: ${shown}. ${fix}`, where);
  };
}

function shownNumber(value: Decimal): string {
  return value.isFinite() ? toSignificant(value, shownDigits) : numberToText(value);
}

function days(value: Decimal): string {
  const shown = shownNumber(value);
  return value.abs().eq(1) ? wording`${shown} day` : wording`${shown} days`;
}

/**
 * The fault of a part without a number. Why it has none is reported at its entry; here it is reported that the schedule
 * lacks it.
 */
function unknownPart(tell: Teller, part: string, value: Decimal | undefined): Problem[] {
  const fix = wording`Give it an entry, or mend the one that it has.`;
  return value?.isNaN() === true
    ? [tell(part, 'schedule-unknown', wording`no value in the crop schedule`, part, fix)]
    : [];
}

function stageFaults(tell: Teller, { number, time, density, survival, boards }: Stage): Problem[] {
  const name = `stage ${number}`;
  const unknowns = Object.entries({ time, boards }).flatMap(([part, value]) =>
    unknownPart(tell, `${name} ${part}`, value),
  );
  const found = [...unknowns];
  const add = (part: string, what: string, shown: string, fix: string): void => {
    found.push(tell(`${name} ${part}`, `schedule-${part}`, what, shown, fix));
  };
  if (time.lt(0)) add('time', wording`stage ${number} time below 0`, days(time), wording`Give 0 to skip the stage.`);
  if (boards?.lt(0) === true)
    add('boards', wording`stage ${number} boards below 0`, shownNumber(boards), wording`Give the boards that it has.`);
  if (time.isZero()) return found;
  const needed = { density, survival };
  found.push(...Object.entries(needed).flatMap(([part, value]) => unknownPart(tell, `${name} ${part}`, value)));
  if (density.lte(0)) {
    add(
      'density',
      wording`stage ${number} density not above 0`,
      shownNumber(density),
      wording`Give the plants that one board carries.`,
    );
  }
  if (survival.lt(0) || survival.gt(1)) {
    const shown = `${shownNumber(survival.times(100))} %`;
    add(
      'survival',
      wording`stage ${number} survival outside 0 to 100 %`,
      shown,
      wording`Give the share of its plants that leaves it alive and kept.`,
    );
  }
  return found;
}

/**
 * A number of boards that is certainly enough for batches of one plant, quick to compute: as if all stages were at
 * their fullest at once.
 */
function enoughForOne({ interval, turnaround, stages }: Schedule): Decimal {
  const most = stages.filter(isRunning).map((stage) => {
    const batches = boardTime(stage, turnaround).dividedBy(interval).ceil().plus(1);
    return batches.times(decimal(1).dividedBy(stage.density).ceil());
  });
  return sum(most);
}

function tooFewBoards(schedule: Schedule, tell: Teller): Problem[] {
  if (!isSound(schedule) || schedule.boards.isNaN()) return [];
  if (schedule.boards.gte(enoughForOne(schedule))) return [];
  const least = boardsFor(schedule, 1);
  if (schedule.boards.gte(least)) return [];
  const fix = wording`A batch of one plant needs ${least} on the fullest day: that is the least that works.`;
  return [tell('boards', 'schedule-boards', wording`boards too few for any batch`, shownNumber(schedule.boards), fix)];
}

/** Everything that keeps a schedule from being followed. What does not depend on a faulty part still computes. */
export function scheduleFaults(schedule: Schedule, parts: CropParts = nothingTagged): Problem[] {
  const { boards, interval, turnaround, stages } = schedule;
  const tell = teller(parts);
  const found = Object.entries({ boards, interval, turnaround }).flatMap(([part, value]) =>
    unknownPart(tell, part, value),
  );
  if (interval.lte(0)) {
    found.push(
      tell(
        'interval',
        'schedule-interval',
        wording`interval not above 0`,
        days(interval),
        wording`Give the days between two sowings.`,
      ),
    );
  }
  if (turnaround.lt(0)) {
    const fix = wording`Give the days that a board is out of use between two crops, or 0.`;
    found.push(tell('turnaround', 'schedule-turnaround', wording`turnaround below 0`, days(turnaround), fix));
  }
  found.push(...stages.flatMap((stage) => stageFaults(tell, stage)));
  if (!stages.some(isRunning)) {
    const named = stages.map(({ number }) => wording`stage ${number}`).join(', ');
    found.push(
      tell('stage 1 time', 'schedule-empty', wording`no stage takes any time`, named, wording`Give one of them days.`),
    );
  }
  return [...found, ...tooFewBoards(schedule, tell)];
}

function monthFaults(tell: Teller, number: number, times: readonly (Decimal | undefined)[]): Problem[] {
  return times.flatMap((time, i) => {
    const part = `stage ${number} time in ${String(i + 1).padStart(2, '0')}`;
    if (time === undefined) return [];
    if (!time.lt(0)) return unknownPart(tell, part, time);
    return [
      tell(part, 'season-time', wording`${part} below 0`, days(time), wording`Give 0 to skip the stage in that month.`),
    ];
  });
}

/** Faults of the parts that depend on the time of the year. */
export function seasonFaults({ firstSowing, closed, monthTimes }: Season, parts: CropParts = nothingTagged): Problem[] {
  const tell = teller(parts);
  const ends = closed.flatMap(({ number, from, to }) => [
    [`closed ${number} from`, from] as const,
    [`closed ${number} to`, to] as const,
  ]);
  const starts = firstSowing === undefined ? [] : [['first sowing', firstSowing] as const];
  const fix = wording`Give a whole number from 1 (1 January) to 365 (31 December).`;
  const notDays = [...starts, ...ends]
    .filter(([, day]) => !isDayOfYear(day))
    .map(([part, day]) => tell(part, 'season-day', wording`${part} is no day of the year`, String(day), fix));
  return [...notDays, ...monthTimes.flatMap((times, i) => monthFaults(tell, i + 1, times))];
}

function longClosed(tell: Teller, { stages }: Schedule, closed: ClosedTime): Problem[] {
  const length = closedLength(closed);
  const shorter = stages.filter((stage) => isRunning(stage) && stage.time.lt(length));
  if (shorter.length === 0) return [];
  const named = shorter.map(({ number, time }) => wording`stage ${number} (${days(time)})`).join(', ');
  const fix = wording`Every batch in it waits on its boards until the closed time ends. Make it shorter, or end sowing earlier.`;
  const what = wording`closed time ${closed.number} longer than ${named}`;
  return [tell(`closed ${closed.number} from`, 'season-closed-long', what, wording`${length} days`, fix)];
}

/** Notices about a schedule that are no faults. */
export function scheduleNotices(schedule: Schedule, season: Season, parts: CropParts = nothingTagged): Problem[] {
  const tell = teller(parts);
  const fix = wording`Everything computes all the same. Check that no digit is too many.`;
  const many = schedule.boards.gte(manyBoards)
    ? [tell('boards', 'schedule-many-boards', wording`very many boards`, shownNumber(schedule.boards), fix)]
    : [];
  const sound = season.closed.filter(({ from, to }) => isDayOfYear(from) && isDayOfYear(to));
  return [...many, ...sound.flatMap((closed) => longClosed(tell, schedule, closed))];
}
