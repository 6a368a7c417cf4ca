import { evaluatePlan } from '../../../src/model/values';
import type { Model } from '../../../src/model/model';
import { caseOf, type Case, type CaseBudget } from '../../../src/present/theCase/caseOf';
import { createFormat } from '../../../src/present/text/numberFormat';
import { modelOf } from '../../model/table';

export const format = createFormat('en-GB');

/** A case of a written model: from its first plan to its last. */
export function caseIn(text: string): { model: Model; found: Case } {
  const model = modelOf(text);
  const last = model.plans.length - 1;
  const found = caseOf(
    model,
    model.plans.map((plan) => evaluatePlan(plan)),
    last,
    last === 0 ? undefined : 0,
  );
  return { model, found };
}

export function madeIn(text: string): CaseBudget {
  const { found } = caseIn(text);
  if (found.kind !== 'made') throw new Error(`no budget: ${found.kind}`);
  return found;
}

/** The transplant hire of a made-up farm: 1,200 more is taken in; 700 of wages more and 100 of rent less is spent. */
export const hire = [
  'sales [EUR/year]: 5000 | label: Sales | budget: return | in A: 5000 | in B: 6200',
  'wages [EUR/year]: 900 | label: Wages | budget: cost | in A: 900 | in B: 1600',
  'rent [EUR/year]: 500 | label: Rent | budget: cost | in A: 500 | in B: 400',
  'house [EUR/year]: 800 | label: House | budget: cost',
].join('\n');
