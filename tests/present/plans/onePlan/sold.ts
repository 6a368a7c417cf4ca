import { evaluatePlan } from '../../../../src/model/values';
import { onePlanOf, type OnePlan } from '../../../../src/present/plans/onePlan/onePlan';
import type { CountedByHand } from '../../../../src/trade/enterpriseBudget';
import { modelOf } from '../../../model/table';

/** 1,000 heads at 2 EUR; 600 of costs rise with them, 900 do not. */
export const heads = `
  heads [head/year]: 1000
  price [EUR/head]: 2
  picking [EUR/head]: 0.6
  sales [EUR/year]: heads * price | label: Sales | budget: return
  grant [EUR/year]: 0 | label: Grant | budget: return
  harvest [EUR/year]: heads * picking | label: Harvest | budget: cost
  rent [EUR/year]: 900 | label: Rent | budget: cost
`;

/** The enterprise budget of a written model’s first plan. */
export function oneIn(text: string, byHand?: CountedByHand): OnePlan | undefined {
  const model = modelOf(text);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  return onePlanOf(model, values, 0, byHand);
}
