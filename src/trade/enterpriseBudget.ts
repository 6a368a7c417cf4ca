import { exact } from '../core/exact';
import { decimal, sum, type Decimal } from '../core/number';
import type { Cell } from '../model/cell';
import { reach } from '../model/graph';
import type { Plan } from '../model/model';
import { inOrder } from '../model/structure';
import { evaluateAffected, type Values } from '../model/values';
import { amountAs } from './budgetAmount';

const unknown = decimal(NaN);
/** Counts of plants are raised to this many times to see what moves with them. */
const raised = decimal('1.01');

/** A line of the budget of one plan, in the unit of the first budget cell. */
export interface PlanLine {
  readonly cell: Cell;
  readonly amount: Decimal;
  /** Whether a person counts it otherwise than the rule does. */
  readonly byHand: boolean;
}

/** What a person says of lines against the rule, by the names of their entries. */
export interface CountedByHand {
  /** Lines that rise with the plants. */
  readonly rising: readonly string[];
  /** Lines that stay as they are. */
  readonly staying: readonly string[];
}

/** Nothing is said against the rule. */
export const byRule: CountedByHand = { rising: [], staying: [] };

/** A plan with its values. */
interface PlanBudgeted {
  readonly cells: readonly Cell[];
  readonly plan: Plan;
  readonly values: Values;
}

/** What one plan takes in and spends in a year; lines in file order. NaN where a line cannot be computed or added. */
export interface EnterpriseBudget {
  /** Returns that change with the plants, and those that do not. */
  readonly returns: readonly PlanLine[];
  readonly otherReturns: readonly PlanLine[];
  readonly variable: readonly PlanLine[];
  readonly fixed: readonly PlanLine[];
  /** Of each list. */
  readonly totals: Readonly<Record<'returns' | 'otherReturns' | 'variable' | 'fixed', Decimal>>;
  /** All returns less variable costs. */
  readonly overVariable: Decimal;
  /** All returns less all costs. */
  readonly margin: Decimal;
}

/** The entries that count the same thing as one does, in a year or in crop time. */
function countsLike(sold: Cell, cells: readonly Cell[]): Cell[] {
  const nouns = [...(sold.unit?.dimension ?? [])].filter(([, power]) => power === 1).map(([kind]) => kind);
  return cells.filter(({ unit }) => {
    const powers = unit?.dimension;
    const isRate = powers?.get('year') === -1 || powers?.get('day') === -1;
    return powers?.size === 2 && isRate && nouns.some((noun) => powers.get(noun) === 1);
  });
}

/**
 * The values with all counts of plants a year or a week raised by a hundredth, of those sown and moved as well as of
 * those sold, and everything worked out anew that hangs on them.
 */
function withMore({ cells, plan, values }: PlanBudgeted, sold: Cell | undefined): Values {
  const counts = sold === undefined ? [] : countsLike(sold, cells).map(({ id }) => id);
  const more = new Map(counts.map((id) => [id, (values.numbers[id] ?? unknown).times(raised)]));
  return evaluateAffected(plan, values, inOrder(plan.structure, reach(counts, plan.structure.feeds)), more);
}

/** Whether a line rises with the plants: as a person says, else as the rule does. */
function risesBy({ rising, staying }: CountedByHand, { name }: Cell, rule: boolean): boolean {
  if (rising.includes(name)) return true;
  return staying.includes(name) ? false : rule;
}

/**
 * The enterprise budget of one plan, from the cells of the budget column. A line is variable where it changes when
 * every count of plants a year or a week is one per cent higher, or a person says that it does; else it is fixed.
 * Source: Washington State University, enterprise budgets FS092E and FS081E (2011); NDSU and NMSU Z-123 for the terms.
 * @param sold the cell that counts the plants sold; without it the rule takes every line as fixed
 */
export function enterpriseBudget(
  of: PlanBudgeted,
  sold: Cell | undefined,
  byHand: CountedByHand = byRule,
): EnterpriseBudget {
  const marked = of.cells.filter(({ budget }) => budget !== '');
  const more = withMore(of, sold);
  const found = marked.map((cell) => {
    const [before, after] = [of.values, more].map(({ numbers }) => numbers[cell.id] ?? unknown) as [Decimal, Decimal];
    const rule = Math.abs(exact.compare(after, before)) === 1;
    const moves = risesBy(byHand, cell, rule);
    return { cell, amount: amountAs(marked[0] ?? cell, cell, before), moves, byHand: moves !== rule };
  });
  const lines = (budget: Cell['budget'], moves: boolean): PlanLine[] =>
    found
      .filter((line) => line.cell.budget === budget && line.moves === moves)
      .map((line) => ({ cell: line.cell, amount: line.amount, byHand: line.byHand }));
  const lists = {
    returns: lines('return', true),
    otherReturns: lines('return', false),
    variable: lines('cost', true),
    fixed: lines('cost', false),
  };
  const total = (list: readonly PlanLine[]): Decimal => sum(list.map(({ amount }) => amount));
  const totals = {
    returns: total(lists.returns),
    otherReturns: total(lists.otherReturns),
    variable: total(lists.variable),
    fixed: total(lists.fixed),
  };
  const overVariable = totals.returns.plus(totals.otherReturns).minus(totals.variable);
  return { ...lists, totals, overVariable, margin: overVariable.minus(totals.fixed) };
}

/** What has to be reached for a plan to cover its costs. */
export interface PlanBreakeven {
  /** What a plant brings, and what its variable costs are. */
  readonly price: Decimal;
  readonly variable: Decimal;
  /** Costs that the plants have to pay besides: fixed ones, less returns that do not hang on plants. */
  readonly fixed: Decimal;
  /** Plants a year at which today’s price covers all costs; undefined where none does. */
  readonly plants: Decimal | undefined;
}

/**
 * The breakeven of a plan whose variable costs and returns rise straight with the plants.
 * Source: University of Georgia (Smith), Estimating Cost of Production and Breakeven Prices; UNL CAP 23-0602 (2023).
 * @param plants sold in a year, above 0
 */
export function planBreakeven({ totals }: Pick<EnterpriseBudget, 'totals'>, plants: Decimal): PlanBreakeven {
  const [price, variable] = [totals.returns.dividedBy(plants), totals.variable.dividedBy(plants)];
  const fixed = totals.fixed.minus(totals.otherReturns);
  const needed = fixed.lte(0) ? decimal(0) : fixed.dividedBy(price.minus(variable));
  return { price, variable, fixed, plants: price.gt(variable) ? needed : undefined };
}

/** The price of a plant that covers all costs at a number of plants a year: fixed ÷ plants + variable. */
export function breakevenPrice(
  { variable, fixed }: Pick<PlanBreakeven, 'variable' | 'fixed'>,
  plants: Decimal,
): Decimal {
  return fixed.dividedBy(plants).plus(variable);
}
