import type { Arithmetic } from '../core/arithmetic';

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

interface Stage<T> {
  readonly time: T;
  readonly density: T;
  readonly survival: T;
}

/** A stage that takes time, with what happens before it. */
interface Running<T> {
  readonly index: number;
  readonly density: T;
  /** Share of the batch that enters it. */
  readonly entering: T;
  /** Batches in it at each instant that matters. */
  readonly batches: readonly number[];
}

/** Largest batch that is looked for: whole numbers stay exact in float64 below it. */
const largestBatch = 2 ** 50;

function stagesOf<T>(args: readonly T[]): Stage<T>[] {
  const stages: Stage<T>[] = [];
  for (let i = 2; i + 2 < args.length; i += 3) {
    stages.push({ time: args[i] as T, density: args[i + 1] as T, survival: args[i + 2] as T });
  }
  return stages;
}

function isSchedule<T>(m: Arithmetic<T>, interval: T, stages: readonly Stage<T>[]): boolean {
  const running = stages.filter(({ time }) => m.toNumber(time) !== 0);
  const sound = ({ time, density, survival }: Stage<T>): boolean =>
    m.toNumber(time) > 0 && m.toNumber(density) > 0 && m.toNumber(survival) >= 0 && m.toNumber(survival) <= 1;
  return m.toNumber(interval) > 0 && running.length > 0 && running.every(sound);
}

/**
 * Sowings up to an instant, plus `lead`. The lead keeps the count above 0, where rounding noise would count as a whole
 * interval.
 */
function sowings<T>(m: Arithmetic<T>, instant: T, interval: T, lead: number): number {
  return m.toNumber(m.floor(m.add(m.divide(instant, interval), m.whole(lead))));
}

function runningStages<T>(m: Arithmetic<T>, interval: T, stages: readonly Stage<T>[]): Running<T>[] {
  const timed = stages.map((stage, index) => ({ ...stage, index })).filter(({ time }) => m.toNumber(time) !== 0);
  let offset = m.whole(0);
  let entering = m.whole(1);
  const spans = timed.map((stage) => {
    const span = { ...stage, entering, from: offset, to: m.add(offset, stage.time) };
    offset = span.to;
    entering = m.multiply(entering, stage.survival);
    return span;
  });
  const lead = Math.floor(m.toNumber(m.divide(offset, interval))) + 2;
  const instants = spans.flatMap(({ from, to }) => [from, to]);
  return spans.map(({ index, density, entering: share, from, to }) => {
    const batches = instants.map(
      (instant) =>
        sowings(m, m.subtract(instant, from), interval, lead) - sowings(m, m.subtract(instant, to), interval, lead),
    );
    return { index, density, entering: share, batches };
  });
}

function startedIn<T>(m: Arithmetic<T>, { entering }: Running<T>, batch: number): number {
  return m.toNumber(m.ceil(m.multiply(m.whole(batch), entering)));
}

function boardsEach<T>(m: Arithmetic<T>, stage: Running<T>, batch: number): number {
  return m.toNumber(m.ceil(m.divide(m.whole(startedIn(m, stage, batch)), stage.density)));
}

/** Most boards in use at once, summed over the stages. */
function peak<T>(m: Arithmetic<T>, stages: readonly Running<T>[], batch: number): number {
  const each = stages.map((stage) => boardsEach(m, stage, batch));
  let most = 0;
  for (let k = 0; k < (stages[0]?.batches.length ?? 0); k += 1) {
    let sum = 0;
    for (let i = 0; i < stages.length; i += 1) sum += (stages[i]?.batches[k] ?? 0) * (each[i] ?? 0);
    if (sum > most) most = sum;
  }
  return most;
}

/** The last whole number for which a condition holds that, once false, stays false; 0 where it never holds. */
function lastThat(holds: (n: number) => boolean, guess: number): number {
  let low = 0;
  let high = Math.max(1, Math.floor(guess));
  let step = 1;
  while (high <= largestBatch && holds(high)) {
    low = high;
    high += step;
    step *= 2;
  }
  step = 1;
  while (high - low > 1) {
    const middle = low > 0 ? Math.floor((low + high) / 2) : Math.max(low + 1, high - step);
    if (holds(middle)) low = middle;
    else high = middle;
    step *= 2;
  }
  return low;
}

/** The balanced batch, which whole boards never beat. */
function balancedBatch<T>(m: Arithmetic<T>, args: readonly T[]): number {
  const [boards = NaN, interval = NaN] = args.map((arg) => m.toNumber(arg));
  let entering = 1;
  let boardTime = 0;
  for (const { time, density, survival } of stagesOf(args)) {
    if (m.toNumber(time) === 0) continue;
    boardTime += (entering * m.toNumber(time)) / m.toNumber(density);
    entering *= m.toNumber(survival);
  }
  return (boards * interval) / boardTime;
}

/**
 * The largest whole batch that can be started every interval so that whole boards suffice.
 *
 * Batch k is in stage i from `k I + o_i` to `k I + o_i + w_i`; a board freed at an instant can be used at that instant.
 * Boards in use change only at the `o_i` and `o_i + w_i` and repeat every `I`, so only those instants are looked at.
 * Losses are counted from the batch: `n_i = ceil(n × Π_{j<i} s_j)`, on `ceil(n_i / d_i)` boards. A stage of time 0 is
 * skipped, its survival with it. Boards in use grow with the batch, so the search halves its interval.
 *
 * @param args boards, interval, then time, density, survival of each stage, in base units (days, shares)
 */
export function wholeBatch<T>(m: Arithmetic<T>, args: readonly T[]): WholeBatch<T> {
  const interval = args[1] as T;
  const stages = stagesOf(args);
  const none = stages.map(() => ({ started: 0, boardsEach: 0, boards: 0 }));
  if (!isSchedule(m, interval, stages)) return { batch: m.whole(NaN), boardsUsed: NaN, stages: none };
  const running = runningStages(m, interval, stages);
  const batch = lastThat((n) => m.compare(m.whole(peak(m, running, n)), args[0] as T) <= 0, balancedBatch(m, args));
  if (batch >= largestBatch) return { batch: m.whole(NaN), boardsUsed: NaN, stages: none };
  return { batch: m.whole(batch), boardsUsed: peak(m, running, batch), stages: loads(m, running, none, batch) };
}

function loads<T>(
  m: Arithmetic<T>,
  running: readonly Running<T>[],
  none: readonly StageLoad[],
  batch: number,
): StageLoad[] {
  return none.map((skipped, index) => {
    const stage = running.find((candidate) => candidate.index === index);
    if (stage === undefined) return skipped;
    const each = boardsEach(m, stage, batch);
    return { started: startedIn(m, stage, batch), boardsEach: each, boards: each * Math.max(...stage.batches) };
  });
}
