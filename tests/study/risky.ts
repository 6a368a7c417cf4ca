import type { View } from '../../src/model/view';
import { drawRisk, type Risk, type RiskRequest } from '../../src/study/risk';
import { riskModel, type RiskModel } from '../../src/study/riskModel';
import { idOf, modelOf, planOf } from '../model/table';
import { drain } from './drain';

/** Cell `a` of a written model, ready for draws; in the last of two plans less the first, where `compared`. */
export function risky(text: string, compared = false): RiskModel {
  const model = modelOf(text);
  const view: View = {
    model,
    result: idOf(model, 'a'),
    plan: compared ? model.plans.at(-1)! : planOf(model),
    against: compared ? model.plans[0]! : undefined,
  };
  return riskModel(view);
}

/** What draws of a written model come to. */
export function riskOf(text: string, request: Partial<RiskRequest> = {}, compared = false): Risk {
  return drain(drawRisk(risky(text, compared), { draws: 10_000, seed: 1, target: 0, ...request }));
}
