import type { Model } from '../../../src/model/model';
import { evaluatePlan } from '../../../src/model/values';
import type { AllPlans } from '../../../src/present/plans/sideBySide';
import { namesAmong } from '../../../src/present/text/entryNames';
import { createFormat } from '../../../src/present/text/numberFormat';
import { nursery } from '../nursery';

/** A model of plans by what each has of its own, with a margin, a cost, a count and a choice that follow. */
const three = [
  'name,label,unit,formula,group,role,budget,choices,plan: Low,plan: Middle,plan: High',
  ',Which plan? A made-up farm,,,,,,,,,',
  'heads,Heads,plant/year,,Plants,headline,,,1000,2000,3000',
  'price,Price,EUR/plant,2,Money,,,,,,',
  'rent,Rent,EUR/year,600,Money,,,,,,',
  'least,Least heads,plant/year,1000,Money,,,,,,',
  'margin,Margin,EUR/year,heads * price,Money,headline,,,,,',
  'plant_cost,Cost of a plant,EUR/plant,rent / heads,Money,headline,,,,,',
  'plug,Plug,,1,Money,headline,,1 one-use; 2 reusable,,,2',
  'pole,Gap,,least / (heads - least),Money,headline,,,,,',
  '',
].join('\n');

export const format = createFormat('en-GB');

/** @param text of a model file */
export function allPlans(text = three): AllPlans {
  const { model } = nursery(text);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  return { model, values, nameOf: namesAmong(model.cells), format };
}

export function namesOf({ plans }: Model): string[] {
  return plans.map(({ name }) => name);
}
