import type { Distribution } from './distribution';
import { momentsOf } from './moments';
import { SobolSampler, type SobolDesign } from './sobolSampling';
import { SobolTally } from './sobolTally';

/** A result of independent inputs, computed for a block of draws at once. */
export interface BlockModel {
  /** Most draws of one run. */
  readonly block: number;
  /** One column for each input, to be filled before a run. */
  readonly inputs: readonly Float64Array[];
  /** The result; NaN where it cannot be computed. */
  readonly result: Float64Array;
  run(count: number): void;
  /** The result of the last run's draws with one input taken from another column; valid until the next call. */
  vary(input: number, column: Float64Array, count: number): Float64Array;
}

/** An input's shares of the variance of the result, each with its standard error. */
export interface SobolIndex {
  /** First-order index: the variance of the result's expectation given the input. */
  readonly first: number;
  readonly firstError: number;
  /** Total index: 1 less what all other inputs explain together. */
  readonly total: number;
  readonly totalError: number;
}

/** The buffers for one block: the matrices A and B, and the results of A and of B. */
class Bench {
  readonly a: readonly Float64Array[];
  readonly b: readonly Float64Array[];
  private readonly ofA: Float64Array;
  private readonly ofB: Float64Array;

  constructor(private readonly model: BlockModel) {
    this.a = model.inputs.map(() => new Float64Array(model.block));
    this.b = model.inputs.map(() => new Float64Array(model.block));
    this.ofA = new Float64Array(model.block);
    this.ofB = new Float64Array(model.block);
  }

  private evaluate(columns: readonly Float64Array[], out: Float64Array, count: number): void {
    this.model.inputs.forEach((input, i) => input.set(columns[i] as Float64Array));
    this.model.run(count);
    out.set(this.model.result);
  }

  /** Computes the results of the rows now in A and B and adds them to the sums. */
  add(tally: SobolTally, count: number): void {
    const { model, a, b, ofA, ofB } = this;
    this.evaluate(b, ofB, count);
    this.evaluate(a, ofA, count);
    tally.addResults(ofA, count);
    tally.addResults(ofB, count);
    b.forEach((column, i) => tally.addInput(i, ofA, ofB, model.vary(i, column, count), count));
  }

  /** A result of the first block that can be computed, or 0: the level from which results are counted. */
  level(count: number): number {
    this.evaluate(this.a, this.ofA, count);
    return this.ofA.subarray(0, count).find((value) => Number.isFinite(value)) ?? 0;
  }
}

function standardError(values: readonly number[]): number {
  return momentsOf(values).sd / Math.sqrt(values.length);
}

function summary(tallies: readonly SobolTally[], inputs: number, level: number): SobolIndex[] {
  const pooled = new SobolTally(inputs, level);
  for (const tally of tallies) pooled.addTally(tally);
  return Array.from({ length: inputs }, (_, i) => {
    const [first, total] = pooled.index(i);
    const each = tallies.map((tally) => tally.index(i));
    return {
      first,
      firstError: standardError(each.map((one) => one[0])),
      total,
      totalError: standardError(each.map((one) => one[1])),
    };
  });
}

/**
 * First-order and total Sobol' indices of independent inputs.
 *
 * Design: scrambled Sobol' points of twice as many coordinates as there are inputs, cut into matrices A and B, and for
 * each input A with that input's column from B: points × (inputs + 2) evaluations. First order as Saltelli and others,
 * Computer Physics Communications 181 (2010) 259-270, table 2 (b), with f(B) counted from its mean; total as Jansen,
 * Computer Physics Communications 117 (1999) 35-43, table 2 (f) there. The variance is that of A and B together. Errors
 * are standard errors over independently scrambled replicates.
 *
 * Limits: inputs must be independent. An estimate may lie a little below 0 or above 1, within its error. A constant
 * result gives 0. Rows in which a result cannot be computed are left out.
 *
 * @yields the share of the points that has been evaluated
 */
export function* sobolIndices(
  model: BlockModel,
  inputs: readonly Pick<Distribution, 'quantile'>[],
  design: SobolDesign,
): Generator<number, SobolIndex[]> {
  const each = design.points / design.replicates;
  const bench = new Bench(model);
  const tallies: SobolTally[] = [];
  let level: number | undefined;
  for (let replicate = 0; replicate < design.replicates; replicate += 1) {
    const sampler = new SobolSampler(inputs, design, replicate);
    for (let from = 0; from < each; from += model.block) {
      const count = Math.min(model.block, each - from);
      sampler.fill(bench.a, bench.b, count);
      level ??= bench.level(count);
      const tally = (tallies[replicate] ??= new SobolTally(inputs.length, level));
      bench.add(tally, count);
      yield (replicate * each + from + count) / design.points;
    }
  }
  return summary(tallies, inputs.length, level ?? 0);
}
