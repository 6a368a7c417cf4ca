import { decimal, floatOf, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { PlanLine } from '../../../trade/enterpriseBudget';
import { columnDecimals } from '../../text/columnDecimals';
import { commonTexts } from '../../text/commonTexts';
import type { Format } from '../../text/numberFormat';
import type { PlanBars } from '../barsPicture';
import type { OnePlan } from './onePlan';

interface CostBar {
  readonly name: string;
  readonly amount: Decimal;
  readonly look: 'filled' | 'hatched';
}

/** Costs of a plant by kind, or of the year where plants are not counted: variable ones first, the largest first. */
export function costBars(
  { budget, forPlants, unit }: OnePlan,
  nameOf: (cell: Cell) => string,
  format: Format,
): PlanBars {
  const plants = forPlants?.plants ?? decimal(1);
  const sorted = (list: readonly PlanLine[], look: CostBar['look']): CostBar[] =>
    list
      .map(({ cell, amount }) => ({ name: nameOf(cell), amount: amount.dividedBy(plants), look }))
      .filter(({ amount }) => !amount.isZero())
      .sort((a, b) => b.amount.cmp(a.amount));
  const bars = [...sorted(budget.variable, 'filled'), ...sorted(budget.fixed, 'hatched')];
  const decimals = columnDecimals(
    bars.map(({ amount }) => amount),
    forPlants?.each ?? unit,
  );
  return {
    names: bars.map(({ name }) => name),
    letters: bars.map(() => ''),
    looks: bars.map(({ look }) => look),
    values: bars.map(({ amount }) => floatOf(amount)),
    texts: bars.map(({ amount }) => (amount.isNaN() ? commonTexts.noValue : format.fixed(amount, decimals))),
  };
}
