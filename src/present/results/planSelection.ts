import type { Option } from '../text/option';
import { commonTexts } from '../text/commonTexts';
import type { Model } from '../../model/model';
import type { ResultScope } from '../whatMatters/tornado/sentences';

/** Whose value of a result a question looks at: plan less against, the plan alone, or the one it is compared with. */
export type Whose = 'difference' | 'plan' | 'against';

/** Which plans' results are looked at. */
export interface PlanSelection {
  readonly plan: number;
  /** The plan that it is less. */
  readonly less: number | undefined;
  /** The plan whose own result stands beside it. */
  readonly beside: number | undefined;
  /** Of the plan, where another stands beside it; blank where no plan needs telling apart. */
  readonly letter: 'A' | 'B' | '';
}

function nameOf({ plans }: Model, plan: number): string {
  return plans[plan]?.name ?? '';
}

/** The plans that a choice looks at: their difference, or one of them with the other beside it. */
export function selectPlans(whose: Whose, plan: number, against: number | undefined): PlanSelection {
  if (against === undefined) return { plan, less: undefined, beside: undefined, letter: '' };
  if (whose === 'difference') return { plan, less: against, beside: undefined, letter: '' };
  return whose === 'plan'
    ? { plan, less: undefined, beside: against, letter: 'B' }
    : { plan: against, less: undefined, beside: plan, letter: 'A' };
}

export function resultScope(model: Model, { plan, less }: PlanSelection): ResultScope {
  const name = nameOf(model, plan);
  if (less !== undefined) return { kind: 'difference', plan: name, against: nameOf(model, less) };
  return { kind: 'plan', plan: name, alone: model.plans.length === 1 };
}

export function whoseOptions(model: Model, plan: number, against: number): Option<Whose>[] {
  return [
    { value: 'difference', label: commonTexts.difference },
    { value: 'against', label: commonTexts.planOf('A', nameOf(model, against)) },
    { value: 'plan', label: commonTexts.planOf('B', nameOf(model, plan)) },
  ];
}
