import { ceilFloat, exceedsFloat, floorFloat } from '../core/float';
import { batchOfTwo, largestQuick, mostSteps, slack } from './twoStages';

/** Batches from here on are too large: below it whole numbers stay exact in float64. */
export const tooLarge = 2 ** 50;

/**
 * Finds the stages that take time.
 * @param args boards, interval, then time, density, survival of each stage
 * @param places filled with where the arguments of these stages begin
 * @returns how many there are; 0 where the arguments are no schedule
 */
export function runningStages(args: readonly number[], places: number[]): number {
  let count = 0;
  for (let i = 2; i + 2 < args.length; i += 3) {
    const time = args[i]!;
    if (time === 0) continue;
    if (!(time > 0 && args[i + 1]! > 0 && args[i + 2]! >= 0 && args[i + 2]! <= 1)) return 0;
    places[count] = i;
    count += 1;
  }
  return args[1]! > 0 && args[0] === args[0] ? count : 0;
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

/**
 * `largestBatch` in float64, bit for bit as far as it goes, on plain numbers and in arrays that are made once, to keep
 * pace with the formulas around it. It starts at the balanced batch, which whole boards never beat, and goes down from
 * one batch at which a stage needs a board less to the next, until the boards suffice; mostly two or three steps.
 */
export class BatchSearch {
  private readonly places: number[] = [];
  /** By running stage: density, share of the batch that enters, boards that one batch takes. */
  private readonly density: number[] = [];
  private readonly entering: number[] = [];
  private readonly each: number[] = [];
  /** When stages begin and end: one more than there are stages. */
  private readonly instants: number[] = [0];
  /** Batches in each stage at each instant, instant by instant. */
  private readonly batches: number[] = [];
  private running = 0;
  private boards = 0;
  /** The instant at which most boards were in use when last looked at. */
  private fullest = 0;
  private readonly holds = (batch: number): boolean => this.fits(batch);

  /**
   * @param args boards, interval, then time, density and survival of each stage
   * @returns NaN for what is no schedule, infinite where the balanced batch is not below `largestQuick`
   */
  largest(args: readonly number[]): number {
    const { places } = this;
    const running = runningStages(args, places);
    if (running === 0) return NaN;
    if (running === 2) {
      const batch = batchOfTwo(args, places[0]!, places[1]!);
      if (batch === batch) return batch;
    }
    this.readStages(args, running);
    return this.search(args[1]!);
  }

  private readStages(args: readonly number[], running: number): void {
    const { places, density, entering, instants } = this;
    this.boards = args[0]!;
    this.running = running;
    let share = 1;
    for (let j = 0; j < running; j += 1) {
      const at = places[j]!;
      density[j] = args[at + 1]!;
      entering[j] = share;
      instants[j + 1] = instants[j]! + args[at]!;
      share *= args[at + 2]!;
    }
  }

  /** Counts the batches in each stage at each instant; returns the most boards that one plant a batch takes up. */
  private countBatches(interval: number): number {
    const { running, instants, batches, entering, density } = this;
    const lead = Math.floor(instants[running]! / interval) + 2;
    let most = 0;
    for (let k = 0; k <= running; k += 1) {
      let boards = 0;
      let begun = k === 0 ? lead : floorFloat(instants[k]! / interval + lead);
      for (let j = 0; j < running; j += 1) {
        const next = j + 1 === k ? lead : floorFloat((instants[k]! - instants[j + 1]!) / interval + lead);
        const inStage = begun - next;
        begun = next;
        batches[k * running + j] = inStage;
        boards += (inStage * entering[j]!) / density[j]!;
      }
      if (boards > most) most = boards;
    }
    return most;
  }

  private search(interval: number): number {
    const most = this.boards / this.countBatches(interval);
    if (!(most < largestQuick)) return Infinity;
    const bound = Math.floor(most * (1 + slack));
    let batch = bound;
    for (let step = 0; step < mostSteps && batch > 0; step += 1) {
      if (this.fits(batch)) return batch === bound || !this.fits(batch + 1) ? batch : lastThat(this.holds, batch + 1);
      batch = this.nextBelow(batch);
    }
    return lastThat(this.holds, batch);
  }

  private fits(batch: number): boolean {
    const { running, density, entering, each, batches } = this;
    for (let j = 0; j < running; j += 1) each[j] = ceilFloat(ceilFloat(batch * entering[j]!) / density[j]!);
    let most = 0;
    let fullest = 0;
    for (let k = 0; k <= running; k += 1) {
      let sum = 0;
      for (let j = 0; j < running; j += 1) sum += batches[k * running + j]! * each[j]!;
      if (sum > most) {
        most = sum;
        fullest = k;
      }
    }
    this.fullest = fullest;
    return !exceedsFloat(most, this.boards);
  }

  /** The largest smaller batch at which some stage that is in use at the fullest instant needs a board less. */
  private nextBelow(batch: number): number {
    const { running, density, entering, each, batches, fullest } = this;
    let next = 0;
    for (let j = 0; j < running; j += 1) {
      if (!(batches[fullest * running + j]! > 0)) continue;
      const largest = floorFloat(floorFloat((each[j]! - 1) * density[j]!) / entering[j]!);
      if (largest > next) next = largest;
    }
    return next < batch ? next : batch - 1;
  }
}
