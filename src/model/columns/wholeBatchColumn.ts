import { ceilFloat, exceedsFloat, float, floorFloat } from '../../core/float';
import { largestBatch } from '../../formula/wholeBatch';
import { batchOfTwo, largestQuick, slack } from './twoStages';

type Column = Float64Array;

/**
 * `whole_batch` down columns: the results of `formula/wholeBatch`, bit for bit, by a search that starts from the bound
 * of the fullest instant and goes down from one batch at which a stage needs a board less to the next.
 */
export class WholeBatchColumn {
  private readonly stages: number;
  private readonly values: Float64Array;
  /** By running stage: density, share of the batch that enters, boards that one batch takes. */
  private readonly density: Float64Array;
  private readonly entering: Float64Array;
  private readonly each: Float64Array;
  /** When stages begin and end: one more than there are stages. */
  private readonly instants: Float64Array;
  private readonly sowings: Float64Array;
  /** Batches in each stage at each instant, instant by instant. */
  private readonly batches: Float64Array;
  private running = 0;
  private boards = 0;
  /** The instant at which most boards were in use when last looked at. */
  private fullest = 0;

  /** @param args boards, interval, then time, density and survival of each stage */
  constructor(private readonly args: readonly Column[]) {
    this.stages = Math.floor((args.length - 2) / 3);
    this.values = new Float64Array(args.length);
    this.density = new Float64Array(this.stages);
    this.entering = new Float64Array(this.stages);
    this.each = new Float64Array(this.stages);
    this.instants = new Float64Array(this.stages + 1);
    this.sowings = new Float64Array((this.stages + 1) ** 2);
    this.batches = new Float64Array((this.stages + 1) * this.stages);
  }

  fill(out: Column, n: number): void {
    const { args, values } = this;
    for (let i = 0; i < n; i += 1) {
      let sum = 0;
      for (let k = 0; k < values.length; k += 1) sum += values[k] = args[k]![i]!;
      out[i] = sum === sum ? this.batch() : NaN;
    }
  }

  private batch(): number {
    const { values } = this;
    this.boards = values[0]!;
    const interval = values[1]!;
    if (!(interval > 0 && this.readStages())) return NaN;
    const batch = this.running === 2 ? this.batchOfTwo(interval) : this.search(interval);
    return batch === batch ? batch : largestBatch(float, Array.from(values));
  }

  /** Takes in the stages that have time; false where they make no schedule. */
  private readStages(): boolean {
    const { values, density, entering, instants } = this;
    let running = 0;
    let share = 1;
    for (let at = 2; at + 2 < values.length; at += 3) {
      const time = values[at]!;
      const survival = values[at + 2]!;
      if (time === 0) continue;
      if (!(time > 0 && values[at + 1]! > 0 && survival >= 0 && survival <= 1)) return false;
      density[running] = values[at + 1]!;
      entering[running] = share;
      instants[running + 1] = instants[running]! + time;
      share *= survival;
      running += 1;
    }
    this.running = running;
    return running > 0;
  }

  /** Counts the batches in each stage at each instant; returns the most boards that one plant a batch takes up. */
  private countBatches(interval: number): number {
    const { running, instants, sowings, batches, entering, density } = this;
    const wide = running + 1;
    const lead = Math.floor(instants[running]! / interval) + 2;
    for (let k = 0; k <= running; k += 1) {
      sowings[k * wide + k] = lead;
      for (let j = 0; j < k; j += 1) {
        const apart = (instants[k]! - instants[j]!) / interval;
        sowings[k * wide + j] = floorFloat(apart + lead);
        sowings[j * wide + k] = floorFloat(lead - apart);
      }
    }
    let most = 0;
    for (let k = 0; k <= running; k += 1) {
      let boards = 0;
      for (let j = 0; j < running; j += 1) {
        const inStage = sowings[k * wide + j]! - sowings[k * wide + j + 1]!;
        batches[k * running + j] = inStage;
        boards += (inStage * entering[j]!) / density[j]!;
      }
      if (boards > most) most = boards;
    }
    return most;
  }

  private batchOfTwo(interval: number): number {
    const { boards, instants, density, entering } = this;
    return batchOfTwo(boards, interval, instants[1]!, instants[2]!, density[0]!, density[1]!, entering[1]!);
  }

  /** NaN where the batch is too large for this search. */
  private search(interval: number): number {
    const most = this.boards / this.countBatches(interval);
    if (!(most < largestQuick)) return NaN;
    const bound = Math.floor(most * (1 + slack));
    let n = bound;
    while (n > 0 && !this.fits(n)) n = this.nextBelow(n);
    if (n <= 0) return this.fits(1) ? this.climb(1) : 0;
    return n === bound ? n : this.climb(n);
  }

  /** The largest batch from one that fits on; rounding may have left the search some plants too low. */
  private climb(from: number): number {
    let n = from;
    while (this.fits(n + 1)) n += 1;
    return n;
  }

  private fits(n: number): boolean {
    const { running, density, entering, each, batches } = this;
    each[0] = ceilFloat(n / density[0]!);
    for (let j = 1; j < running; j += 1) each[j] = ceilFloat(ceilFloat(n * entering[j]!) / density[j]!);
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
  private nextBelow(n: number): number {
    const { running, density, entering, each, batches, fullest } = this;
    let next = 0;
    for (let j = 0; j < running; j += 1) {
      if (!(batches[fullest * running + j]! > 0)) continue;
      const largest = floorFloat(floorFloat((each[j]! - 1) * density[j]!) / entering[j]!);
      if (largest > next) next = largest;
    }
    return next < n ? next : n - 1;
  }
}
