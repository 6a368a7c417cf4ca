import type { Option } from '../text/option';
import { commonTexts } from '../text/commonTexts';
import type { Model } from '../../model/model';
import type { ResultScope } from '../whatMatters/tornado/sentences';

/** Whose value of a result is in question: `plan` less `against`, the plan's own, or that of the plan compared with. */
export type Whose = 'difference' | 'plan' | 'against';

/** The plans whose results are in question. */
export interface PlanSelection {
  readonly plan: number;
  /** The plan that is subtracted. */
  readonly less: number | undefined;
  /** The plan whose own result is shown with it. */
  readonly beside: number | undefined;
  /** The plan's letter, where another plan is shown with it; blank where only one is. */
  readonly letter: 'A' | 'B' | '';
}

function nameOf({ plans }: Model, plan: number): string {
  return plans[plan]?.name ?? '';
}

/** The plans for a choice: their difference, or one of them with the other shown with it. */
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
