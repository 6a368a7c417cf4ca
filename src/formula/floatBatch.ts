import { ceilFloat, exceedsFloat, floorFloat } from '../core/float';

/** Batches from here on are too large: below it whole numbers stay exact in float64. */
export const tooLarge = 2 ** 50;

/**
 * Where the arguments of the stages that take time begin, or undefined where the arguments are no schedule.
 * @param args boards, interval, then time, density, survival of each stage
 */
export function runningStages(args: readonly number[]): number[] | undefined {
  let count = 0;
  for (let i = 2; i + 2 < args.length; i += 3) {
    const time = args[i]!;
    if (time === 0) continue;
    if (!(time > 0 && args[i + 1]! > 0 && args[i + 2]! >= 0 && args[i + 2]! <= 1)) return undefined;
    count += 1;
  }
  if (!(count > 0 && args[1]! > 0 && args[0] === args[0])) return undefined;
  const running = new Array<number>(count);
  for (let i = 2, k = 0; k < count; i += 3) if (args[i] !== 0) running[k++] = i;
  return running;
}

/**
 * Most boards in use at once, summed over the stages.
 * @param standing batches in each stage, one after the other, at each instant that matters
 * @param each boards of one batch in each stage
 */
export function mostBoards(standing: readonly number[], each: readonly number[]): number {
  let most = 0;
  for (let at = 0; at < standing.length; at += each.length) {
    let sum = 0;
    for (let stage = 0; stage < each.length; stage += 1) sum += standing[at + stage]! * each[stage]!;
    if (sum > most) most = sum;
  }
  return most;
}

/** The last whole number for which a condition holds that, once false, stays false; 0 where it never holds. */
export function lastThat(holds: (n: number) => boolean, guess: number): number {
  let low = 0;
  let high = guess > 1 ? Math.min(guess, tooLarge) : 1;
  let step = 1;
  while (high <= tooLarge && holds(high)) {
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

/** Batches in each stage at each instant at which a batch moves on; `standingBatches` of wholeBatch.ts in float64. */
function standingIn(args: readonly number[], running: readonly number[]): number[] {
  const interval = args[1]!;
  const count = running.length;
  const moves = new Array<number>(count + 1);
  moves[0] = 0;
  for (let k = 0; k < count; k += 1) moves[k + 1] = moves[k]! + args[running[k]!]!;
  const lead = Math.floor(moves[count]! / interval) + 2;
  const standing = new Array<number>(count * (count + 1));
  for (let now = 0; now <= count; now += 1) {
    let before = 0;
    for (let k = 0; k <= count; k += 1) {
      const begun = k === now ? lead : floorFloat((moves[now]! - moves[k]!) / interval + lead);
      if (k > 0) standing[now * count + k - 1] = before - begun;
      before = begun;
    }
  }
  return standing;
}

/** Steps down from the balanced batch before a plain search takes over. */
const mostSteps = 20;

/**
 * The largest whole batch in float64; `largestBatch` says the rule. On plain numbers and in loops, to keep pace with
 * the formulas around it: it starts at the balanced batch, which whole boards never beat, and steps down to where the
 * next stage saves a board, until the boards suffice. That takes two or three steps, mostly.
 * @param args boards, interval, then time, density, survival of each stage
 * @param running from `runningStages`
 * @returns `tooLarge` where there is no bound
 */
export function floatBatch(args: readonly number[], running: readonly number[]): number {
  const count = running.length;
  const share = new Array<number>(count);
  const density = new Array<number>(count);
  const each = new Array<number>(count);
  let entering = 1;
  for (let k = 0; k < count; k += 1) {
    share[k] = entering;
    density[k] = args[running[k]! + 1]!;
    each[k] = entering / density[k]!;
    entering *= args[running[k]! + 2]!;
  }
  const standing = standingIn(args, running);
  const boards = args[0]!;
  const plan = { boards, share, density, standing, each };
  let batch = floorFloat(boards / mostBoards(standing, each));
  for (let step = 0; step < mostSteps && batch >= 1; step += 1) {
    if (fits(plan, batch)) return batch < tooLarge && !fits(plan, batch + 1) ? batch : lastFitting(plan, batch);
    batch = 0;
    for (let k = 0; k < count; k += 1) {
      batch = Math.max(batch, floorFloat(floorFloat((each[k]! - 1) * density[k]!) / share[k]!));
    }
  }
  return lastFitting(plan, batch);
}

/** What a batch is tried on, by running stage; `each` is filled by each try. */
interface Plan {
  readonly boards: number;
  readonly share: readonly number[];
  readonly density: readonly number[];
  readonly standing: readonly number[];
  readonly each: number[];
}

/** Whether the boards suffice for a batch; its boards in each stage go to `each`. */
function fits({ boards, share, density, standing, each }: Plan, batch: number): boolean {
  for (let k = 0; k < each.length; k += 1) each[k] = ceilFloat(ceilFloat(batch * share[k]!) / density[k]!);
  return !exceedsFloat(mostBoards(standing, each), boards);
}

function lastFitting(plan: Plan, guess: number): number {
  return lastThat((n) => fits(plan, n), guess);
}
