import type { Cell } from '../../../model/cell';
import { question, type Question } from '../../../model/response';
import type { CellError } from '../../../model/values';
import type { ModelStore } from './modelStore';

/** A result of one plan, or of a plan less another, ready for studies; undefined where the model lacks a plan. */
export function resultQuestion(
  store: Pick<ModelStore, 'model' | 'values'>,
  result: Cell,
  plan: number,
  against: number | undefined,
): Question | undefined {
  const model = store.model();
  const values = store.values();
  const [own, other] = [model.plans[plan], against === undefined ? undefined : model.plans[against]];
  const ownValues = values[plan];
  if (own === undefined || ownValues === undefined) return undefined;
  const view = { model, result: result.id, plan: own, against: other };
  return question(view, ownValues, against === undefined ? undefined : values[against]);
}

/** Why a result has no value today, in the first of some plans in which it has none. */
export function resultError(
  store: Pick<ModelStore, 'values'>,
  result: Cell,
  plans: readonly number[],
): CellError | undefined {
  return plans.flatMap((plan) => store.values()[plan]?.errors.get(result.id) ?? [])[0];
}
