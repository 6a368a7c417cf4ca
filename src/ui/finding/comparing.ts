import type { Cell } from '../../model/cell';
import { question, type Question } from '../../model/response';
import type { CellError } from '../../model/values';
import type { Live } from '../live';

/** A result of one plan, or of a plan less another, ready for studies; undefined where a plan is not there. */
export function questionOf(
  live: Pick<Live, 'model' | 'values'>,
  result: Cell,
  plan: number,
  against: number | undefined,
): Question | undefined {
  const model = live.model();
  const values = live.values();
  const [own, other] = [model.plans[plan], against === undefined ? undefined : model.plans[against]];
  const ownValues = values[plan];
  if (own === undefined || ownValues === undefined) return undefined;
  const view = { model, result: result.id, plan: own, against: other };
  return question(view, ownValues, against === undefined ? undefined : values[against]);
}

/** Why a result has no value today, in the first of some plans that has none. */
export function errorIn(live: Pick<Live, 'values'>, result: Cell, plans: readonly number[]): CellError | undefined {
  return plans.flatMap((plan) => live.values()[plan]?.errors.get(result.id) ?? [])[0];
}
