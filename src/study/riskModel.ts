import { compileColumns, compileVaried, type Columns, type ColumnTarget } from '../model/columns/columns';
import { evaluatePlan } from '../model/values';
import { uncertain, type Lever, type View } from '../model/view';
import type { Plan } from '../model/model';
import { uncertainOf, type Uncertain } from './draws';
import type { BlockModel } from './sobolIndices';

/** A view compiled for draws of the uncertain inputs that its result depends on. */
export interface RiskModel {
  readonly view: View;
  /** In file order. */
  readonly inputs: readonly Uncertain[];
  /** The result in the plan, and then that in the plan compared with, where there is one. */
  readonly targets: readonly ColumnTarget[];
  readonly columns: Columns;
}

/** For each cell that some levers move in a plan, the number of its input. */
function movingIn(levers: readonly Lever[], side: 'inPlan' | 'inAgainst'): Map<number, number> {
  return new Map(levers.flatMap((lever, i) => (lever[side] ? [[lever.cell.id, i] as const] : [])));
}

function feeds(plan: Plan | undefined, lever: Lever, result: number): boolean {
  return plan !== undefined && plan.structure.route([lever.cell.id], result).length > 0;
}

/** Compiles a view for draws. */
export function riskModel(view: View): RiskModel {
  const { plan, against, result } = view;
  const levers = uncertain(view).filter(
    (lever) => (lever.inPlan && feeds(plan, lever, result)) || (lever.inAgainst && feeds(against, lever, result)),
  );
  const targetIn = (one: Plan, side: 'inPlan' | 'inAgainst'): ColumnTarget => ({
    plan: one,
    values: evaluatePlan(one),
    cell: result,
    moving: movingIn(levers, side),
  });
  const targets = [targetIn(plan, 'inPlan'), ...(against ? [targetIn(against, 'inAgainst')] : [])];
  return { view, inputs: uncertainOf(levers), targets, columns: compileColumns(targets, levers.length) };
}

/**
 * A view's result from the columns of its targets: the plan's, less the other plan's where there is one. NaN where it
 * cannot be computed.
 */
export function viewColumn([own, other]: readonly Float64Array[], out: Float64Array, count: number): Float64Array {
  for (let i = 0; i < count; i += 1) {
    const value = other === undefined ? own![i]! : own![i]! - other[i]!;
    out[i] = value - value === 0 ? value : NaN;
  }
  return out;
}

/** The same for Sobol' indices, which take the inputs as independent. */
export function blockModel({ targets, inputs }: RiskModel): BlockModel {
  const columns = compileVaried(targets, inputs.length);
  const [result, varied] = [new Float64Array(columns.block), new Float64Array(columns.block)];
  return {
    block: columns.block,
    inputs: columns.inputs,
    result,
    run: (count) => {
      columns.run(count);
      viewColumn(columns.results, result, count);
    },
    vary: (input, column, count) => viewColumn(columns.vary(input, column, count), varied, count),
  };
}

/** The pairs of a model's inputs that are correlated; a correlation may be written at either input or at both. */
export function correlatedPairs({ inputs }: RiskModel): (readonly [Uncertain, Uncertain])[] {
  const byName = new Map(inputs.map((input) => [input.lever.cell.name, input]));
  const pairs: (readonly [Uncertain, Uncertain])[] = [];
  for (const input of inputs) {
    for (const { other, rank } of input.lever.cell.correlations) {
      const partner = byName.get(other);
      const isKnown = pairs.some(([a, b]) => a === partner && b === input);
      if (partner !== undefined && rank !== 0 && !isKnown) pairs.push([input, partner]);
    }
  }
  return pairs;
}

/** The first correlated pair, or undefined where all inputs are independent. */
export function correlatedPair(model: RiskModel): readonly [Uncertain, Uncertain] | undefined {
  return correlatedPairs(model)[0];
}
