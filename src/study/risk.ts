import { correlations } from '../model/correlation';
import type { Lever } from '../model/view';
import { Draws } from './draws';
import { failuresIn, mostExamined, type Failure } from './failures';
import { InputInformation } from './informationValue';
import { momentsOf, type Moments } from './moments';
import { PerfectInformation, type Worth } from './perfectInformation';
import { viewColumn, type RiskModel } from './riskModel';

/** Settings of a run of draws. */
export interface RiskRequest {
  /** At least 1. */
  readonly draws: number;
  /** A whole number from 0 to 2^53 - 1; the same one gives the same draws on any machine. */
  readonly seed: number;
  /** The result above which one goes ahead and below which not. */
  readonly target: number;
}

/** How many draws have been made, and their results. */
export interface RiskProgress {
  readonly done: number;
  readonly of: number;
  /** The results so far, in the order drawn; a view of the column that further draws fill. */
  readonly result: Float64Array;
}

/** The worth of knowing one input. */
interface InputWorth extends Worth {
  readonly lever: Lever;
}

/** What a run of draws found. */
export interface Risk {
  readonly draws: number;
  /** Draws whose result could not be computed; all other figures leave them out. */
  readonly failed: number;
  readonly failures: readonly Failure[];
  /** Inputs in % of which some draws lay below 0 or above 100, and how many draws that were. */
  readonly outside: readonly { readonly lever: Lever; readonly count: number }[];
  /** The results, ascending. */
  readonly sorted: Float64Array;
  readonly moments: Moments;
  /** What it is worth to know all inputs, or one of them, before choosing; NaN without results. */
  readonly knowingAll: Worth;
  readonly knowingEach: readonly InputWorth[];
}

/** Blocks between two reports. */
const blocksPerReport = 8;

/** The results of all draws that could be computed. */
class Kept {
  private readonly column: Float64Array;
  count = 0;
  failed = 0;
  /** The inputs of the first draws that failed. */
  readonly examined: number[][] = [];

  constructor(
    private readonly model: RiskModel,
    draws: number,
  ) {
    this.column = new Float64Array(draws);
  }

  add(result: Float64Array, count: number): void {
    for (let i = 0; i < count; i += 1) {
      const value = result[i]!;
      if (value === value) {
        this.column[this.count] = value;
        this.count += 1;
      } else this.fail(i);
    }
  }

  private fail(i: number): void {
    this.failed += 1;
    if (this.examined.length >= mostExamined) return;
    this.examined.push(this.model.columns.inputs.map((input) => input[i]!));
  }

  soFar(): Float64Array {
    return this.column.subarray(0, this.count);
  }
}

/** What it is worth to know inputs, from draws of the result less the target. */
class Information {
  private readonly all = new PerfectInformation(2);
  private readonly each: readonly InputInformation[];
  private readonly above: Float64Array;
  private readonly nothing: Float64Array;

  constructor(
    private readonly model: RiskModel,
    { draws, target }: RiskRequest,
  ) {
    this.each = model.inputs.map(({ lever }) => new InputInformation(draws, lever.range?.shape === 'either'));
    this.above = new Float64Array(model.columns.block);
    this.nothing = new Float64Array(model.columns.block);
    this.target = target;
  }

  private readonly target: number;

  add(chances: readonly Float64Array[], result: Float64Array, count: number): void {
    for (let i = 0; i < count; i += 1) this.above[i] = result[i]! - this.target;
    this.all.add([this.nothing, this.above], count);
    this.each.forEach((input, k) => input.add(chances[k] as Float64Array, this.above, count));
  }

  worth(): Pick<Risk, 'knowingAll' | 'knowingEach'> {
    const knowingAll = this.all.worth();
    const ahead = this.all.best() === 1;
    const knowingEach = this.model.inputs.map(({ lever }, k) => {
      const { value, error } = (this.each[k] as InputInformation).worth(ahead);
      return { lever, value: Math.min(value, knowingAll.value), error };
    });
    return { knowingAll, knowingEach };
  }
}

/**
 * Draws every uncertain input by its shape and correlations and computes the result for each draw, with both plans of a
 * comparison computed from the same draws. Plain Monte Carlo, so the mean's standard error is sd/√n.
 * @yields how many draws have been made, every few thousand draws; a caller cancels by not going on
 */
export function* drawRisk(model: RiskModel, request: RiskRequest): Generator<RiskProgress, Risk> {
  const { columns, view } = model;
  const { factor } = correlations(view.model.cells, view.model.ids);
  const draws = new Draws(model.inputs, factor, request.seed, columns.block);
  const information = new Information(model, request);
  const kept = new Kept(model, request.draws);
  const result = new Float64Array(columns.block);
  for (let from = 0, block = 1; from < request.draws; from += columns.block, block += 1) {
    const count = Math.min(columns.block, request.draws - from);
    draws.fill(columns.inputs, count);
    columns.run(count);
    viewColumn(columns.results, result, count);
    kept.add(result, count);
    information.add(draws.chances, result, count);
    if (block % blocksPerReport === 0) yield { done: from + count, of: request.draws, result: kept.soFar() };
  }
  return finish(model, request, kept, draws, information);
}

function finish(model: RiskModel, { draws }: RiskRequest, kept: Kept, drawn: Draws, information: Information): Risk {
  const sorted = kept.soFar();
  const moments = momentsOf(sorted);
  sorted.sort();
  const outside = model.inputs.flatMap(({ lever }, k) => {
    const count = drawn.outside[k] as number;
    return count > 0 ? [{ lever, count }] : [];
  });
  return {
    draws,
    failed: kept.failed,
    failures: failuresIn(model, kept.examined),
    outside,
    sorted,
    moments,
    ...information.worth(),
  };
}
