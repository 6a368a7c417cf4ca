import { decimal, type Decimal } from '../../../core/number';
import { parseUnit, type Unit } from '../../../core/unit';
import { currencyOf } from '../../../model/budgetFaults';
import type { Cell } from '../../../model/cell';
import { nounsIn } from '../../../model/change/formulaScope';
import type { Model } from '../../../model/model';
import type { Values } from '../../../model/values';
import {
  byRule,
  enterpriseBudget,
  planBreakeven,
  type CountedByHand,
  type EnterpriseBudget,
  type PlanBreakeven,
} from '../../../trade/enterpriseBudget';
import { plantsOfYear } from '../../results/plantsOfYear';

/** What the plants of a year have to reach. */
export interface ForPlants {
  /** The entry that counts them. */
  readonly cell: Cell;
  /** In a year, above 0. */
  readonly plants: Decimal;
  /** Money for a plant, and plants a year. */
  readonly each: Unit;
  readonly aYear: Unit;
  readonly needs: PlanBreakeven;
}

/** The enterprise budget of one plan. */
export interface OnePlan {
  readonly budget: EnterpriseBudget;
  /** Of all lines. */
  readonly unit: Unit;
  /** Undefined where the model counts no plants a year, or has none today. */
  readonly forPlants: ForPlants | undefined;
}

function unitFrom(text: string, model: Model): Unit | undefined {
  const unit = parseUnit(text, nounsIn(model));
  return 'code' in unit ? undefined : unit;
}

/** The budget of a plan by its index; undefined where the model has no lines that can be added up. */
export function onePlanOf(
  model: Model,
  values: readonly Values[],
  index: number,
  byHand: CountedByHand = byRule,
): OnePlan | undefined {
  const marked = model.cells.filter(({ budget }) => budget !== '');
  const [first] = marked;
  const [plan, own] = [model.plans[index], values[index]];
  if (first?.unit === undefined || plan === undefined || own === undefined) return undefined;
  if (!marked.every((cell) => currencyOf(cell) !== undefined && currencyOf(cell) === currencyOf(first)))
    return undefined;
  const sold = plantsOfYear(model, values);
  const budget = enterpriseBudget({ cells: model.cells, plan, values: own }, sold?.cell, byHand);
  const currency = currencyOf(first) ?? '';
  const plants = sold?.counts[index] ?? decimal(NaN);
  const isYearly = first.unitText === `${currency}/year`;
  const each = sold && unitFrom(`${currency}/${sold.noun}`, model);
  const aYear = sold && unitFrom(`${sold.noun}/year`, model);
  const isKnown = sold !== undefined && isYearly && plants.isFinite() && plants.gt(0);
  const forPlants =
    isKnown && each !== undefined && aYear !== undefined
      ? { cell: sold.cell, plants, each, aYear, needs: planBreakeven(budget, plants) }
      : undefined;
  return { budget, unit: first.unit, forPlants };
}
