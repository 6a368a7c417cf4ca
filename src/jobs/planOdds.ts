import type { Way } from '../study/best';
import { drawPlanOdds, type PlanOdds } from '../study/planOdds';
import type { Prepared, Report } from './job';

/** A request for how often each of some plans, by index, is the best of them. */
export interface PlanOddsRequest {
  readonly result: number;
  readonly plans: readonly number[];
  readonly way: Way;
  readonly draws: number;
  readonly seed: number;
}

/** How often each plan is the best; undefined where the model has fewer than two of them. */
export function* planOdds(
  { model }: Prepared,
  { result, plans, way, draws, seed }: PlanOddsRequest,
): Generator<Report<PlanOdds | undefined>, PlanOdds | undefined> {
  const known = plans.flatMap((plan) => model.plans[plan] ?? []);
  if (known.length < 2) return undefined;
  const steps = drawPlanOdds(model, known, result, way, { draws, seed });
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield { phase: 'draws', share: step.value / draws, found: undefined };
  }
}
