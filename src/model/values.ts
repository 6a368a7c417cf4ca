import { wording } from '../language/wording';
import { exact } from '../core/exact';
import { decimal, type Decimal } from '../core/number';
import { eachInSteps, finish, type Steps } from '../core/steps';
import { evaluate } from '../formula/evaluate';
import type { Reason } from '../formula/function';
import type { Cell } from './cell';
import { reach } from './graph';
import type { Content } from './content';
import type { Plan } from './model';
import { inOrder } from './structure';

/** Why a cell has no value. */
export interface CellError {
  readonly code: string;
  readonly message: string;
  /** The cell at fault: itself, or one upstream. */
  readonly cause: number;
}

/** The exact values of one plan. */
export interface Values {
  /** By cell, in the cell's own unit; true is 1, false 0; NaN where there is an error. */
  readonly numbers: readonly Decimal[];
  readonly errors: ReadonlyMap<number, CellError>;
}

const unknown = decimal(NaN);

/** Numbers that stand in for inputs, by cell. */
export type Substitutes = ReadonlyMap<number, Decimal>;

/** One evaluation of some of a plan's cells, in order. */
class Sweep {
  private failed: Reason | undefined;
  private missing: number | undefined;
  readonly arithmetic = exact;

  constructor(
    private readonly plan: Plan,
    readonly numbers: Decimal[],
    readonly errors: Map<number, CellError>,
    private readonly substitutes: Substitutes,
  ) {}

  cell(id: number): Decimal {
    const value = this.numbers[id] ?? unknown;
    if (value.isNaN()) this.missing ??= id;
    return value;
  }

  fail(reason: Reason): void {
    this.failed ??= reason;
  }

  compute(id: number): void {
    this.errors.delete(id);
    this.numbers[id] = this.substitutes.get(id) ?? this.valueOf(id, this.plan.contents[id]);
  }

  private valueOf(id: number, content: Content | undefined): Decimal {
    if (content?.kind === 'input') return content.number;
    if (content?.kind !== 'calculated') return this.voidError(id, content);
    this.failed = undefined;
    this.missing = undefined;
    const value = evaluate(content.node, this);
    if (value.isNaN()) this.errors.set(id, this.errorOf(id));
    return value;
  }

  private voidError(id: number, content: Content | undefined): Decimal {
    const fault = content?.kind === 'void' ? content.fault : { code: 'blank', message: wording`nothing to compute` };
    this.errors.set(id, {
      code: fault.code,
      message: fault.message,
      cause: content?.kind === 'void' ? content.cause : id,
    });
    return unknown;
  }

  private errorOf(id: number): CellError {
    if (this.failed !== undefined) return { ...this.failed, cause: id };
    const upstream = this.missing === undefined ? undefined : this.errors.get(this.missing);
    return upstream ?? { code: 'unknown', message: wording`no value`, cause: this.missing ?? id };
  }
}

const noSubstitutes: Substitutes = new Map();

/** Cells that are computed in one step: a formula of 10,000 characters may take long by itself. */
const cellsPerStep = 1;

/** All values of a plan. */
export function* evaluateInSteps(plan: Plan): Steps<Values> {
  const sweep = new Sweep(
    plan,
    plan.contents.map(() => unknown),
    new Map(),
    noSubstitutes,
  );
  yield* eachInSteps(plan.structure.order, (id) => sweep.compute(id), cellsPerStep);
  return sweep;
}

/** The same at once. */
export function evaluatePlan(plan: Plan): Values {
  return finish(evaluateInSteps(plan));
}

/** The cells that a change of some cells may touch, themselves included, in the order in which they compute. */
export function affected({ structure }: Plan, changed: Iterable<number>): number[] {
  return inOrder(structure, reach(changed, structure.feeds));
}

/**
 * The values after some inputs changed; only the cells that these feed are computed again.
 * @param before the values of the same plan before the change
 * @param ids the cells to compute, from `affected`
 */
export function evaluateAffected(
  plan: Plan,
  before: Values,
  ids: readonly number[],
  substitutes: Substitutes = noSubstitutes,
): Values {
  const sweep = new Sweep(plan, [...before.numbers], new Map(before.errors), substitutes);
  for (const id of ids) sweep.compute(id);
  return sweep;
}

/** An error in a sentence, naming the cell at fault where it lies upstream. */
export function errorSentence(error: CellError, cell: number, cells: readonly Cell[]): string {
  const cause = cells[error.cause];
  return error.cause === cell || cause === undefined
    ? wording`cannot be computed: ${error.message}`
    : wording`cannot be computed: ${error.message} in ${cause.name}`;
}
