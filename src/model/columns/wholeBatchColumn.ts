import { ceilFloat, exceedsFloat, float, floorFloat } from '../../core/float';
import { largestBatch } from '../../formula/wholeBatch';

type Column = Float64Array;

/** Rounding and ties move the bound that whole boards cannot beat by less than this share. */
const slack = 1e-11;
/** From here on the general search takes over. */
const largestQuick = 2 ** 40;

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
    this.sowings = new Float64Array(this.stages + 1);
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
    if (!(interval > 0) || !this.readStages()) return NaN;
    const most = this.boards / this.countBatches(interval);
    if (!(most < largestQuick)) return largestBatch(float, Array.from(values));
    return this.search(Math.floor(most * (1 + slack)));
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
    const lead = Math.floor(instants[running]! / interval) + 2;
    let most = 0;
    for (let k = 0; k <= running; k += 1) {
      for (let j = 0; j <= running; j += 1) {
        sowings[j] = j === k ? lead : floorFloat((instants[k]! - instants[j]!) / interval + lead);
      }
      let boards = 0;
      for (let j = 0; j < running; j += 1) {
        const inStage = sowings[j]! - sowings[j + 1]!;
        batches[k * running + j] = inStage;
        boards += (inStage * entering[j]!) / density[j]!;
      }
      if (boards > most) most = boards;
    }
    return most;
  }

  private search(bound: number): number {
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
    for (let j = 0; j < running; j += 1) each[j] = ceilFloat(ceilFloat(n * entering[j]!) / density[j]!);
    let most = 0;
    for (let k = 0; k <= running; k += 1) {
      let sum = 0;
      for (let j = 0; j < running; j += 1) sum += batches[k * running + j]! * each[j]!;
      if (sum > most) {
        most = sum;
        this.fullest = k;
      }
    }
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
