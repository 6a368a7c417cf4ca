import { createMemo, createSignal, type Accessor } from 'solid-js';
import type { Live } from './live';

/** The plans looked at, as indices among the model's. */
export interface Compared {
  readonly plan: Accessor<number>;
  /** Undefined where the model has one plan. */
  readonly against: Accessor<number | undefined>;
  /** What stands side by side: the plan compared with first, then the plan. */
  readonly columns: Accessor<readonly number[]>;
  setPlan(name: string): void;
  setAgainst(name: string): void;
}

const letters = ['A', 'B'] as const;

/** The letter of a column of numbers; none where there is only one. */
export function letterOf(column: number, columns: number): string {
  return columns === 1 ? '' : (letters[column] ?? '');
}

/** The last plan is compared with the first, the reference, until someone chooses others. */
export function createCompared(live: Live): Compared {
  const [planName, setPlan] = createSignal('');
  const [againstName, setAgainst] = createSignal('');
  const named = (name: string): number => live.shape().plans.findIndex((plan) => plan.name === name);
  const plan = createMemo(() => (named(planName()) === -1 ? live.shape().plans.length - 1 : named(planName())));
  const against = createMemo(() => {
    const chosen = named(againstName());
    if (chosen !== -1 && chosen !== plan()) return chosen;
    const [first] = live
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
