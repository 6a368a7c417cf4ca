import { batch, createMemo, createSignal, type Accessor } from 'solid-js';
import { afterForm, afterMove, afterRemoval, type PlansChanged } from '../../../present/plans/changes';
import { emptyForm, type PlanForm } from '../../../present/plans/form';
import type { Phrase } from '../../../present/text/phrase';
import { planFormSetting } from '../../app/preferences/settings/plans';
import type { PageState } from '../../app/pageContext';

/** What the last change did. */
interface ChangeDone {
  /** Whether it was of the plans themselves or of a number in one. */
  readonly about: 'plans' | 'number';
  readonly said: Phrase;
  readonly version: number;
}

/** What can be done with the plans of a model, and what was done last. */
export interface PlanChanges {
  /** What is being typed, while its plan is there. */
  readonly form: Accessor<PlanForm | undefined>;
  open(does: PlanForm['does'], plan: string): void;
  readonly type: (typed: Partial<Pick<PlanForm, 'name' | 'first'>>) => void;
  readonly close: () => void;
  /** Does what the form asks for; returns the name of the plan that came of it, undefined where nothing did. */
  readonly submit: () => string | undefined;
  /** Returns whether it was done. */
  move(plan: string, by: -1 | 1): boolean;
  remove(plan: string): void;
  /** Tells of a change of a number that is made already. */
  readonly tell: (done: Phrase) => void;
  /** What the last change did, until anything else is changed. */
  readonly done: Accessor<ChangeDone | undefined>;
  readonly takeBack: () => void;
}

export function createPlanChanges({
  store,
  compared,
  choice,
}: Pick<PageState, 'store' | 'compared' | 'choice'>): PlanChanges {
  const [last, setLast] = createSignal<ChangeDone>();
  const form = createMemo(() => {
    const kept = choice.get(planFormSetting);
    return store.shape().plans.some(({ name }) => name === kept?.plan) ? kept : undefined;
  });
  const setForm = (next: PlanForm | undefined): void => choice.set(planFormSetting, next);
  const tell = (about: ChangeDone['about'], said: Phrase): void => {
    setLast({ about, said, version: store.version() });
  };
  const make = (changed: PlansChanged | undefined): boolean => {
    if (changed === undefined) return false;
    store.replace(changed.sheet);
    tell('plans', changed.done);
    return true;
  };
  const done = createMemo(() => (last()?.version === store.version() ? last() : undefined));
  return {
    form,
    open: (does, plan) => {
      const { sheet, plans } = store.model();
      const names = plans.map(({ name }) => name);
      setForm(emptyForm(does, plan, sheet, names));
    },
    type: (typed) => {
      const now = form();
      if (now !== undefined) setForm({ ...now, ...typed });
    },
    close: () => setForm(undefined),
    submit: () => {
      const asked = form();
      if (asked === undefined) return undefined;
      return batch(() => {
        if (!make(afterForm(store.model().sheet, asked))) return undefined;
        if (asked.does === 'copy') {
          compared.setAgainst(asked.first.trim() || asked.plan);
          compared.setPlan(asked.name.trim());
        }
        setForm(undefined);
        return asked.name.trim();
      });
    },
    move: (plan, by) => make(afterMove(store.model().sheet, plan, by)),
    remove: (plan) => {
      make(afterRemoval(store.model().sheet, plan));
    },
    tell: (said) => tell('number', said),
    done,
    takeBack: () => store.undo(),
  };
}
