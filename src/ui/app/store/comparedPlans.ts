import { createMemo, createSignal, type Accessor } from 'solid-js';
import type { ModelStore } from './modelStore';

/** The plan looked at and the plan compared with, by index. */
export interface ComparedPlans {
  readonly plan: Accessor<number>;
  /** Undefined where the model has one plan. */
  readonly against: Accessor<number | undefined>;
  /** The plans side by side: the one compared with first, then the other. */
  readonly columns: Accessor<readonly number[]>;
  setPlan(name: string): void;
  setAgainst(name: string): void;
}

/** Until someone chooses, the last plan is compared with the first, the reference. */
export function createComparedPlans(store: ModelStore): ComparedPlans {
  const [planName, setPlan] = createSignal('');
  const [againstName, setAgainst] = createSignal('');
  const named = (name: string): number => store.shape().plans.findIndex((plan) => plan.name === name);
  const plan = createMemo(() => (named(planName()) === -1 ? store.shape().plans.length - 1 : named(planName())));
  const against = createMemo(() => {
    const chosen = named(againstName());
    if (chosen !== -1 && chosen !== plan()) return chosen;
    const [first] = store
      .shape()
      .plans.map((_plan, p) => p)
      .filter((p) => p !== plan());
    return first;
  });
  const columns = createMemo(() => [against(), plan()].filter((p) => p !== undefined), undefined, {
    equals: (a, b) => a.join() === b.join(),
  });
  return { plan, against, columns, setPlan, setAgainst };
}
