import { decimal, sum, type Decimal } from '../core/number';
import { exact } from '../core/exact';
import type { Cell } from '../model/cell';
import type { Values } from '../model/values';
import { amountAs } from './budgetAmount';

const unknown = decimal(NaN);

/** A line of a partial budget: a budget cell and the size of its change, always positive. */
export interface BudgetLine {
  readonly cell: Cell;
  readonly value: Decimal;
}

/**
 * What changes between two plans, each thing once. Lines are in file order and in the unit of the first budget cell, as
 * cells may be in money a month or in thousands.
 */
export interface PartialBudget {
  readonly addedReturns: readonly BudgetLine[];
  readonly reducedCosts: readonly BudgetLine[];
  readonly addedCosts: readonly BudgetLine[];
  readonly reducedReturns: readonly BudgetLine[];
  /** added returns + reduced costs − added costs − reduced returns; NaN where a line cannot be computed or added. */
  readonly netChange: Decimal;
}

/** The change of a cell, in the unit of another; 0 where it is within rounding. */
function changeOf(cell: Cell, first: Cell, from: Values, to: Values): Decimal {
  const [before, after] = [from, to].map(({ numbers }) => numbers[cell.id] ?? unknown) as [Decimal, Decimal];
  if (amountAs(first, cell, decimal(0)).isNaN()) return unknown;
  if (exact.compare(after, before) === 0) return decimal(0);
  return amountAs(first, cell, after.minus(before));
}

/**
 * The partial budget of going from one plan to another, from the cells of the budget column.
 * Source: NDSU, Introduction to Partial Budgeting; NMSU Guide Z-123 (2021).
 * @param from the values of the plan that is given up
 * @param to the values of the plan that is taken
 */
export function partialBudget(cells: readonly Cell[], from: Values, to: Values): PartialBudget {
  const marked = cells.filter(({ budget }) => budget !== '');
  const changes = marked.map((cell) => ({ cell, change: changeOf(cell, marked[0] ?? cell, from, to) }));
  const lines = (budget: Cell['budget'], sign: 1 | -1): BudgetLine[] =>
    changes
      .filter(({ cell, change }) => cell.budget === budget && change.times(sign).gt(0))
      .map(({ cell, change }) => ({ cell, value: change.abs() }));
  const netChange = sum(changes.map(({ cell, change }) => (cell.budget === 'return' ? change : change.negated())));
  return {
    addedReturns: lines('return', 1),
    reducedCosts: lines('cost', -1),
    addedCosts: lines('cost', 1),
    reducedReturns: lines('return', -1),
    netChange,
  };
}
