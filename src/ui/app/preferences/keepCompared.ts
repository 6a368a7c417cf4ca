import { createEffect, untrack } from 'solid-js';
import type { ComparedPlans } from '../store/comparedPlans';
import type { ModelStore } from '../store/modelStore';
import type { KeptChoice } from './choice';
import { againstSetting, planSetting } from './settings/page';
import type { Setting } from './settings/setting';

/** Keeps the plan and the plan compared with among the choices; of two plans, where they are swapped. */
export function keepCompared(compared: ComparedPlans, choice: KeptChoice, store: ModelStore): void {
  compared.setPlan(choice.get(planSetting));
  compared.setAgainst(choice.get(againstSetting));
  createEffect(() => {
    const { plans } = store.shape();
    const isUsual = plans.length < 3 && compared.plan() === plans.length - 1;
    const keep = (setting: Setting<string>, plan = -1): void => {
      const name = isUsual ? '' : (plans[plan]?.name ?? '');
      if (untrack(() => choice.get(setting)) !== name) choice.set(setting, name);
    };
    keep(planSetting, compared.plan());
    keep(againstSetting, compared.against());
  });
}
