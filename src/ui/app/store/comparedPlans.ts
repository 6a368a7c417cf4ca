import { createComputed, createMemo, createSignal, on, type Accessor } from 'solid-js';
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

/** The new name of a plan, where the names of two moments differ in that one alone; else undefined. */
function renamed(before: readonly string[], now: readonly string[], name: string): string | undefined {
  const changed = now.filter((one, p) => one !== before[p]);
  const isRename = before.length === now.length && changed.length === 1;
  return isRename && before.includes(name) && !now.includes(name) ? changed[0] : undefined;
}

/**
 * A plan chosen by its name, as its index, which follows when the plan gets another name, by undo too; −1 while no plan
 * has the name.
 */
export function createPlanChoice({ shape }: ModelStore): readonly [Accessor<number>, (name: string) => void] {
  const [chosen, choose] = createSignal('');
  const names = createMemo(() => shape().plans.map(({ name }) => name));
  createComputed(
    on(names, (now, before) => {
      if (before !== undefined) choose((name) => renamed(before, now, name) ?? name);
    }),
  );
  const index = createMemo(() => names().indexOf(chosen()));
  return [index, choose];
}

/** Until someone chooses, the last plan is compared with the first, the reference. */
export function createComparedPlans(store: ModelStore): ComparedPlans {
  const [chosenPlan, setPlan] = createPlanChoice(store);
  const [chosenAgainst, setAgainst] = createPlanChoice(store);
  const plan = createMemo(() => (chosenPlan() === -1 ? store.shape().plans.length - 1 : chosenPlan()));
  const against = createMemo(() => {
    const chosen = chosenAgainst();
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
