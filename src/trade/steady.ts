import { exact } from '../core/exact';
import { decimal, type Decimal } from '../core/number';
import { boardTime, entering, isRunning, type Schedule } from './schedule';

/**
 * Batches in each stage at once in steady running, `[instant][stage]`, at the instants at which boards in use change.
 */
export type Together = readonly (readonly number[])[];

/** What one batch takes in a stage; 0 of each in a skipped one. */
export interface Load {
  /** Plants entering, rounded up. */
  readonly started: number;
  readonly boardsEach: number;
}

/**
 * How the turnaround is counted. `in the stage`: it lengthens the stage, as in `whole_batch`, so that the next stage
 * begins after it. `beside the next`: the plants move on at once, and the boards that they left are out of use while
 * the next stage has begun, as on a farm.
 */
export type Turnaround = 'in the stage' | 'beside the next';

interface Span {
  readonly from: Decimal;
  readonly to: Decimal;
}

const zero = decimal(0);

/** Whether a schedule can be followed: an interval, some time, holes in the boards, shares from 0 to 1. */
export function isSound({ interval, turnaround, stages }: Schedule): boolean {
  const running = stages.filter(isRunning);
  return (
    interval.gt(0) &&
    turnaround.gte(0) &&
    running.length > 0 &&
    running.every(({ time, density, survival }) => time.gt(0) && density.gt(0) && survival.gte(0) && survival.lte(1))
  );
}

function spansOf({ turnaround, stages }: Schedule, place: Turnaround): Span[] {
  let from = zero;
  return stages.map((stage) => {
    const to = from.plus(boardTime(stage, turnaround));
    const span = { from, to };
    from = place === 'in the stage' ? to : from.plus(stage.time);
    return span;
  });
}

/**
 * Batches at once in each stage of a sound schedule. At phase φ a stage that holds boards from o to o + w has floor((φ
 * − o)/I) − floor((φ − o − w)/I) batches on them; only the instants at which a stage begins or ends matter.
 */
export function together(schedule: Schedule, place: Turnaround): Together {
  const spans = spansOf(schedule, place);
  const sowings = (instant: Decimal): number => exact.floor(instant.dividedBy(schedule.interval)).toNumber();
  // The instants are moved up by whole intervals, so that a rounding error is never compared with 0.
  const last = spans.reduce((most, { to }) => exact.larger(most, to), zero);
  const lead = schedule.interval.times(sowings(last) + 2);
  const instants = spans.flatMap(({ from, to }) => [from.plus(lead), to.plus(lead)]);
  return instants.map((instant) =>
    spans.map(({ from, to }) => sowings(instant.minus(from)) - sowings(instant.minus(to))),
  );
}

/** The plants and boards of one batch in each stage of a sound schedule, losses counted from the batch. */
export function loadsOf({ stages }: Schedule, batch: number): Load[] {
  const shares = entering(stages);
  return stages.map((stage, i) => {
    if (!isRunning(stage)) return { started: 0, boardsEach: 0 };
    const started = exact.ceil(decimal(batch).times(shares[i] ?? zero));
    return { started: started.toNumber(), boardsEach: exact.ceil(started.dividedBy(stage.density)).toNumber() };
  });
}

/** The most boards in use at once, summed over the stages. */
export function mostBoards(standing: Together, loads: readonly Load[]): number {
  const sums = standing.map((batches) =>
    batches.reduce((sum, n, stage) => sum + n * (loads[stage]?.boardsEach ?? 0), 0),
  );
  return Math.max(0, ...sums);
}

/** The boards that a batch of some size needs on the fullest day in steady running; NaN for an unsound schedule. */
export function boardsFor(schedule: Schedule, batch: number, place: Turnaround = 'in the stage'): number {
  return isSound(schedule) ? mostBoards(together(schedule, place), loadsOf(schedule, batch)) : NaN;
}
