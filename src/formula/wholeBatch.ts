import type { Arithmetic } from '../core/arithmetic';
import { finite } from '../core/float';
import { BatchSearch, lastThat, runningStages, tooLarge } from './batchSearch';

/** Batch in whole boards and what it takes. NaN batch: the schedule is not one. */
export interface WholeBatch<T> {
  /** Largest whole number of plants that can be started every interval; 0 when nothing fits. */
  readonly batch: T;
  /** Peak of boards in use, summed over the stages. */
  readonly boardsUsed: number;
  /** By stage; a skipped stage has 0 of each. */
  readonly stages: readonly StageLoad[];
}

/** What one stage holds. */
export interface StageLoad {
  /** Plants entering, rounded up. */
  readonly started: number;
  /** Boards of one batch. */
  readonly boardsEach: number;
  /** The stage's own most boards at once. */
  readonly boards: number;
}

/** A stage that takes time. */
interface Stage<T> {
  /** Its place among all stages. */
  readonly index: number;
  readonly time: T;
  readonly density: T;
  /** Share of the batch that enters it; undefined for the first, which all of it enters. */
  readonly entering: T | undefined;
}

/** A schedule made ready for the search. */
interface Schedule<T> {
  readonly boards: T;
  /** The stages that take time. */
  readonly stages: readonly Stage<T>[];
  /** Batches in each of them, one after the other, at each instant at which a batch moves on. */
  readonly standing: readonly number[];
}

function stagesAt<T>(m: Arithmetic<T>, args: readonly T[], running: readonly number[]): Stage<T>[] {
  let entering: T | undefined;
  return running.map((at) => {
    const stage = { index: (at - 2) / 3, time: args[at] as T, density: args[at + 1] as T, entering };
    const survival = args[at + 2] as T;
    entering = entering === undefined ? survival : m.multiply(entering, survival);
    return stage;
  });
}

/**
 * Batches that have begun a stage and not left it, at each instant at which a batch moves on. Sowings are counted with
 * a lead that keeps the count above 0, where rounding noise would count as a whole interval.
 */
function standingBatches<T>(m: Arithmetic<T>, interval: T, stages: readonly Stage<T>[]): number[] {
  const moves = [m.whole(0)];
  for (const { time } of stages) moves.push(m.add(moves[moves.length - 1] as T, time));
  const lead = Math.floor(m.toNumber(m.divide(moves[stages.length] as T, interval))) + 2;
  const ahead = m.whole(lead);
  return moves.flatMap((instant, now) => {
    const begun = moves.map((move, k) =>
      k === now ? lead : m.toNumber(m.floor(m.add(m.divide(m.subtract(instant, move), interval), ahead))),
    );
    return stages.map((_, stage) => begun[stage]! - begun[stage + 1]!);
  });
}

function scheduleOf<T>(m: Arithmetic<T>, args: readonly T[], inFloat64: readonly number[]): Schedule<T> {
  const places: number[] = [];
  const running = runningStages(inFloat64, places);
  const stages = stagesAt(m, args, places.slice(0, running));
  return { boards: args[0] as T, stages, standing: standingBatches(m, args[1] as T, stages) };
}

function startedIn<T>(m: Arithmetic<T>, { entering }: Stage<T>, batch: T): T {
  return entering === undefined ? batch : m.ceil(m.multiply(batch, entering));
}

function boardsOf<T>(m: Arithmetic<T>, stages: readonly Stage<T>[], batch: T): number[] {
  return stages.map((stage) => m.toNumber(m.ceil(m.divide(startedIn(m, stage, batch), stage.density))));
}

/**
 * The largest whole batch that can be started every interval so that whole boards suffice; NaN for what is no schedule
 * or has no bound, 0 when nothing fits.
 *
 * Batch k is in stage i from `k I + o_i` to `k I + o_i + w_i`; a board freed at an instant can be used at that instant.
 * Boards in use change only at the `o_i` and `o_i + w_i` and repeat every `I`, so only those instants are looked at.
 * Losses are counted from the batch: `n_i = ceil(n × Π_{j<i} s_j)`, on `ceil(n_i / d_i)` boards. A stage of time 0 is
 * skipped, its survival with it. Boards in use grow with the batch: one that fits before one that does not is largest.
 *
 * @param args boards, interval, then time, density, survival of each stage, in base units (days, shares)
 */
export function largestBatch<T>(m: Arithmetic<T>, args: readonly T[]): T {
  const inFloat64 = numbersOf(m, args);
  const likely = quick.largest(inFloat64);
  const found = inFloat64 === args && likely < Infinity;
  const batch = found || !(likely >= 0) ? likely : search(m, scheduleOf(m, args, inFloat64), likely);
  return m.whole(batch < tooLarge ? batch : NaN);
}

/** Made once: its arrays hold nothing from one call to the next. */
const quick = new BatchSearch();

/** The same list where the numbers are float64 already. */
function numbersOf<T>(m: Arithmetic<T>, args: readonly T[]): readonly number[] {
  return areNumbers(args) ? args : args.map((arg) => m.toNumber(arg));
}

function areNumbers(args: readonly unknown[]): args is readonly number[] {
  return typeof args[0] === 'number';
}

/**
 * Most boards in use at once, summed over the stages; NaN where they are too many to count.
 * @param standing batches in each stage, one after the other, at each instant that matters
 * @param each boards of one batch in each stage
 */
function mostBoards(standing: readonly number[], each: readonly number[]): number {
  let most = 0;
  for (let at = 0; at < standing.length; at += each.length) {
    let sum = 0;
    for (let stage = 0; stage < each.length; stage += 1) sum += standing[at + stage]! * each[stage]!;
    most = Math.max(most, finite(sum));
  }
  return most;
}

/** Searches from a likely batch, so that mostly only it and the next one are looked at. */
function search<T>(m: Arithmetic<T>, { boards, stages, standing }: Schedule<T>, likely: number): number {
  return lastThat((n) => {
    const most = mostBoards(standing, boardsOf(m, stages, m.whole(n)));
    return m.compare(m.whole(most), boards) <= 0;
  }, likely);
}

/** The largest batch with what it takes. */
export function wholeBatch<T>(m: Arithmetic<T>, args: readonly T[]): WholeBatch<T> {
  const loads: StageLoad[] = [];
  for (let i = 2; i + 2 < args.length; i += 3) loads.push({ started: 0, boardsEach: 0, boards: 0 });
  const batch = largestBatch(m, args);
  if (!m.isKnown(batch)) return { batch, boardsUsed: NaN, stages: loads };
  const { stages, standing } = scheduleOf(m, args, numbersOf(m, args));
  const each = boardsOf(m, stages, batch);
  stages.forEach((stage, i) => {
    const most = Math.max(...standing.filter((_, at) => at % stages.length === i));
    const started = m.toNumber(startedIn(m, stage, batch));
    loads[stage.index] = { started, boardsEach: each[i]!, boards: each[i]! * most };
  });
  return { batch, boardsUsed: mostBoards(standing, each), stages: loads };
}
