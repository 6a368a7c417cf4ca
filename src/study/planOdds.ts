import { correlations } from '../model/correlation';
import { compileColumns, type ColumnTarget } from '../model/columns/columns';
import type { Model, Plan } from '../model/model';
import { evaluatePlan } from '../model/values';
import { uncertain, type Lever } from '../model/view';
import type { Way } from './best';
import { Draws, uncertainOf } from './draws';
import type { RiskRequest } from './risk';

/** How often each of several plans is the best of all. */
export interface PlanOdds {
  /** Draws made, and those left out because a plan had no result in them. */
  readonly draws: number;
  readonly failed: number;
  /** For each plan the share of the counted draws in which it is the best; ties are shared out, so they add up to 1. */
  readonly shares: readonly number[];
  /** Share of the counted draws in which two plans or more tie for the best. */
  readonly ties: number;
  /** The mean result of each plan. */
  readonly means: readonly number[];
  /** Whether no input with a range moves the result in any of the plans. */
  readonly certain: boolean;
}

/** Results this near to one another, as a share of the best, tie: float64's own rounding. */
const same = 1e-12;

/** Counts in how many draws each of several results is the best. */
export class BestTally {
  private readonly won: Float64Array;
  private readonly sums: Float64Array;
  private counted = 0;
  private tied = 0;
  private made = 0;

  constructor(
    private readonly results: number,
    private readonly way: Way,
  ) {
    this.won = new Float64Array(results);
    this.sums = new Float64Array(results);
  }

  /** @param columns one for each result; NaN, or what is not finite, where it has none */
  add(columns: readonly Float64Array[], count: number): void {
    this.made += count;
    for (let i = 0; i < count; i += 1) this.addOne(columns, i);
  }

  private addOne(columns: readonly Float64Array[], i: number): void {
    const sign = this.way === 'highest' ? 1 : -1;
    let best = -Infinity;
    for (let k = 0; k < this.results; k += 1) {
      const value = columns[k]![i]!;
      if (!Number.isFinite(value)) return;
      best = Math.max(best, sign * value);
    }
    const least = best - same * Math.abs(best);
    let winners = 0;
    for (let k = 0; k < this.results; k += 1) if (sign * columns[k]![i]! >= least) winners += 1;
    for (let k = 0; k < this.results; k += 1) {
      const value = columns[k]![i]!;
      this.sums[k] = this.sums[k]! + value;
      if (sign * value >= least) this.won[k] = this.won[k]! + 1 / winners;
    }
    this.counted += 1;
    if (winners > 1) this.tied += 1;
  }

  found(): Omit<PlanOdds, 'certain'> {
    const { counted, made } = this;
    return {
      draws: made,
      failed: made - counted,
      shares: Array.from(this.won, (won) => won / counted),
      ties: this.tied / counted,
      means: Array.from(this.sums, (sum) => sum / counted),
    };
  }
}

/** An input that is drawn, with the plans in which it moves, by their place among those compared. */
interface Drawn {
  readonly lever: Lever;
  readonly plans: ReadonlySet<number>;
}

/** The inputs with a range that move a result in one plan or more, in file order. */
function drawnFor(model: Model, plans: readonly Plan[], result: number): Drawn[] {
  const found = new Map<number, { lever: Lever; plans: Set<number> }>();
  plans.forEach((plan, p) => {
    for (const lever of uncertain({ model, result, plan, against: undefined })) {
      const { id } = lever.cell;
      if (plan.structure.route([id], result).length === 0) continue;
      const one = found.get(id) ?? { lever, plans: new Set() };
      one.plans.add(p);
      found.set(id, one);
    }
  });
  return [...found.values()].sort((a, b) => a.lever.cell.id - b.lever.cell.id);
}

/**
 * Draws every uncertain input once for all plans, with the same start number the same draws as a comparison of two, and
 * counts how often each plan has the best result.
 * @param plans at least two, each with a result today
 * @yields the draws made so far; a caller cancels by not going on
 */
export function* drawPlanOdds(
  model: Model,
  plans: readonly Plan[],
  result: number,
  way: Way,
  { draws, seed }: Omit<RiskRequest, 'target'>,
): Generator<number, PlanOdds> {
  const drawn = drawnFor(model, plans, result);
  const targets = plans.map((plan, p): ColumnTarget => {
    const moving = drawn.flatMap(({ lever, plans: seen }, i) => (seen.has(p) ? [[lever.cell.id, i] as const] : []));
    return { plan, values: evaluatePlan(plan), cell: result, moving: new Map(moving) };
  });
  const columns = compileColumns(targets, drawn.length);
  const inputs = uncertainOf(drawn.map(({ lever }) => lever));
  const made = new Draws(inputs, correlations(model.cells, model.ids).factor, seed, columns.block);
  const tally = new BestTally(plans.length, way);
  const count = inputs.length === 0 ? 1 : draws;
  for (let from = 0; from < count; from += columns.block) {
    const here = Math.min(columns.block, count - from);
    made.fill(columns.inputs, here);
    columns.run(here);
    tally.add(columns.results, here);
    yield from + here;
  }
  return { ...tally.found(), certain: inputs.length === 0 };
}
