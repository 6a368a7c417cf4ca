import { exact } from '../core/exact';
import { float } from '../core/float';
import { decimal, type Decimal } from '../core/number';
import { wholeBatch } from '../formula/wholeBatch';
import { batchFlow, boardTime, isRunning, type Schedule, type Stage } from './schedule';
import { isSound } from './steady';

/** One thing to change in a schedule. */
export type Change =
  | { readonly kind: 'interval'; readonly to: Decimal }
  | { readonly kind: 'density'; readonly stage: number; readonly to: Decimal }
  | { readonly kind: 'time'; readonly stage: number; readonly to: Decimal }
  /** Days taken from one stage and given to another; the plants grow as long as before. */
  | {
      readonly kind: 'shift';
      readonly stage: number;
      readonly to: Decimal;
      readonly from: number;
      readonly left: Decimal;
    };

/** A change that finishes more plants on whole boards, all else unchanged. */
export interface Suggestion {
  readonly change: Change;
  readonly batch: Decimal;
  readonly finishedPerWeek: Decimal;
  /** Finished plants a week more than now. */
  readonly gain: Decimal;
}

/** Days between sowings that suit a working week or a whole number of days. */
const intervals = [1, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 10, 10.5, 14];
const halfWeek = decimal('3.5');
/** Densities are tried up to this share above today's. */
const moreHoles = 0.15;
/** At most this many densities are suggested for a stage. */
const mostDensities = 3;
/** At most this many higher densities are computed. */
const mostTried = 100;
/** A gain below this share of today's flow counts as rounding. */
const least = 1e-9;

function withStage(schedule: Schedule, number: number, changed: Partial<Stage>): Schedule {
  const stages = schedule.stages.map((stage) => (stage.number === number ? { ...stage, ...changed } : stage));
  return { ...schedule, stages };
}

/** The schedule after a change. */
export function changed(schedule: Schedule, change: Change): Schedule {
  switch (change.kind) {
    case 'interval':
      return { ...schedule, interval: change.to };
    case 'density':
      return withStage(schedule, change.stage, { density: change.to });
    case 'time':
      return withStage(schedule, change.stage, { time: change.to });
    case 'shift':
      return withStage(withStage(schedule, change.stage, { time: change.to }), change.from, { time: change.left });
  }
}

/** The largest batch on whole boards, searched in double precision, which is much faster. */
function quickBatch({ boards, interval, turnaround, stages }: Schedule): number {
  const args = stages.flatMap((stage) => [boardTime(stage, turnaround), stage.density, stage.survival]);
  const { batch } = wholeBatch(
    float,
    [boards, interval, ...args].map((arg) => arg.toNumber()),
  );
  return batch;
}

function tried(schedule: Schedule, change: Change): Omit<Suggestion, 'gain'> {
  const then = changed(schedule, change);
  const batch = decimal(quickBatch(then));
  return { change, batch, finishedPerWeek: batchFlow(then, batch) };
}

function gains(flow: Decimal, now: Decimal): boolean {
  return flow.gt(now.times(1 + least));
}

function intervalChanges({ interval }: Schedule): Change[] {
  return intervals
    .map((days) => decimal(days))
    .filter((to) => !to.eq(interval))
    .map((to) => ({ kind: 'interval', to }));
}

/** Stage times to try: half a week more or less, and the nearest multiples of the interval below and above. */
function timeChanges(schedule: Schedule, { number: stage, time }: Stage): Change[] {
  const turns = time.plus(schedule.turnaround).dividedBy(schedule.interval);
  const multiples = [exact.floor(turns), exact.ceil(turns)].map((n) =>
    n.times(schedule.interval).minus(schedule.turnaround),
  );
  const times = [time.minus(halfWeek), time.plus(halfWeek), ...multiples];
  const distinct = times.filter((to, i) => to.gt(0) && !to.eq(time) && times.findIndex((other) => other.eq(to)) === i);
  return distinct.map((to) => ({ kind: 'time', stage, to }));
}

/** Half a week taken from each other stage and given to this one. */
function shiftChanges({ stages }: Schedule, { number: stage, time }: Stage): Change[] {
  const others = stages.filter((other) => isRunning(other) && other.number !== stage && other.time.gt(halfWeek));
  return others.map((other) => ({
    kind: 'shift',
    stage,
    to: time.plus(halfWeek),
    from: other.number,
    left: other.time.minus(halfWeek),
  }));
}

/** Higher densities to try: only those that finish more than every lower one. */
function densityChanges(schedule: Schedule, { number: stage, density }: Stage, now: Decimal): Change[] {
  const found: Change[] = [];
  let best = now;
  const first = density.floor();
  const more = exact.floor(density.times(1 + moreHoles).minus(first));
  // So many holes on a board that not each can be tried, as nobody has: some between are.
  const stride = exact.larger(decimal(1), exact.ceil(more.dividedBy(mostTried)));
  for (let n = 1; stride.times(n).lte(more) && n <= mostTried && found.length < mostDensities; n += 1) {
    const to = first.plus(stride.times(n));
    const { change, finishedPerWeek } = tried(schedule, { kind: 'density', stage, to });
    if (!gains(finishedPerWeek, best)) continue;
    best = finishedPerWeek;
    found.push(change);
  }
  return found;
}

/**
 * Changes that finish more plants a week on whole boards, best first. One change at a time is computed: other
 * intervals, higher densities, half a week more or less in a stage or moved between two stages, and a stage time that
 * is a multiple of the interval. Effects on the plants, the price and the work are not counted, so fewer days and
 * higher densities nearly always seem to gain. Empty for a schedule with a fault.
 */
export function suggestions(schedule: Schedule): Suggestion[] {
  if (!isSound(schedule)) return [];
  const now = batchFlow(schedule, decimal(quickBatch(schedule)));
  const running = schedule.stages.filter(isRunning);
  const changes = [
    ...intervalChanges(schedule),
    ...running.flatMap((stage) => [
      ...densityChanges(schedule, stage, now),
      ...timeChanges(schedule, stage),
      ...shiftChanges(schedule, stage),
    ]),
  ];
  return changes
    .map((change) => tried(schedule, change))
    .filter(({ finishedPerWeek }) => gains(finishedPerWeek, now))
    .map((found) => ({ ...found, gain: found.finishedPerWeek.minus(now) }))
    .sort((a, b) => b.gain.cmp(a.gain));
}
