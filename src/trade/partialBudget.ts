import { decimal, type Decimal } from '../core/number';
import { divide, parts } from '../core/ratio';
import type { Cell } from '../model/cell';
import type { Values } from '../model/values';

/** A line of a partial budget: a budget cell and the size of its change in its own unit, always positive. */
export interface BudgetLine {
  readonly cell: Cell;
  readonly value: Decimal;
}

/** What changes between two plans, each thing once; all lines in file order. */
export interface PartialBudget {
  readonly addedReturns: readonly BudgetLine[];
  readonly reducedCosts: readonly BudgetLine[];
  readonly addedCosts: readonly BudgetLine[];
  readonly reducedReturns: readonly BudgetLine[];
  /**
   * added returns + reduced costs − added costs − reduced returns, in the unit of the first budget cell; NaN where a
   * line cannot be computed.
   */
  readonly netChange: Decimal;
}

/** A sum in the unit of `first`: lines may be in money a month or in thousands. */
function totalIn(first: Cell | undefined, lines: readonly BudgetLine[]): Decimal {
  return lines.reduce((sum, { cell, value }) => {
    if (cell.unit === undefined || first?.unit === undefined) return sum.plus(value);
    const { over, under } = parts(divide(cell.unit.scale, first.unit.scale));
    return sum.plus(value.times(over).dividedBy(under));
  }, decimal(0));
}

/**
 * The partial budget of going from one plan to another, from the cells of the budget column.
 * Source: NDSU, Introduction to Partial Budgeting; NMSU Guide Z-123 (2021).
 * @param from the values of the plan that is given up
 * @param to the values of the plan that is taken
 */
export function partialBudget(cells: readonly Cell[], from: Values, to: Values): PartialBudget {
  const changes = cells
    .filter(({ budget }) => budget !== '')
    .map((cell) => ({
      cell,
      change: (to.numbers[cell.id] ?? decimal(NaN)).minus(from.numbers[cell.id] ?? decimal(NaN)),
    }));
  const lines = (budget: Cell['budget'], sign: 1 | -1): BudgetLine[] =>
    changes
      .filter(({ cell, change }) => cell.budget === budget && change.times(sign).gt(0))
      .map(({ cell, change }) => ({ cell, value: change.abs() }));
  const [addedReturns, reducedReturns] = [lines('return', 1), lines('return', -1)];
  const [addedCosts, reducedCosts] = [lines('cost', 1), lines('cost', -1)];
  const total = (lines: readonly BudgetLine[]): Decimal => totalIn(changes[0]?.cell, lines);
  const gains = total(addedReturns).plus(total(reducedCosts));
  const known = changes.every(({ change }) => !change.isNaN());
  const netChange = known ? gains.minus(total(addedCosts)).minus(total(reducedReturns)) : decimal(NaN);
  return { addedReturns, reducedCosts, addedCosts, reducedReturns, netChange };
}
