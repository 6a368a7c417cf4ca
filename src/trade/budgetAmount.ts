import { decimal, type Decimal } from '../core/number';
import { divide, parts } from '../core/ratio';
import { currencyOf } from '../model/budgetFaults';
import type { Cell } from '../model/cell';

/** An amount of a cell in the unit of another; NaN where the two are not money a year of one currency. */
export function amountAs(first: Cell, cell: Cell, amount: Decimal): Decimal {
  const canAdd = currencyOf(cell) !== undefined && currencyOf(cell) === currencyOf(first);
  if (!canAdd || cell.unit === undefined || first.unit === undefined) return decimal(NaN);
  const { over, under } = parts(divide(cell.unit.scale, first.unit.scale));
  return amount.times(over).dividedBy(under);
}
