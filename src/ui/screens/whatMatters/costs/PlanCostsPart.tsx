import { createMemo, Show, type JSX } from 'solid-js';
import { planCosts } from '../../../../present/allPlans/costs';
import { allPlansTexts } from '../../../../present/allPlans/texts';
import type { ScreenProps } from '../../../app/screenProps';
import { PlanCostsView } from './PlanCostsView';

/** The costs of all plans, worked out from today's numbers. */
export function PlanCostsPart(props: ScreenProps & { compared: readonly number[] }): JSX.Element {
  const costs = createMemo(() => planCosts(props.store.model(), props.store.values()));
  return (
    <Show when={costs()} fallback={<p>{allPlansTexts.noCosts}</p>}>
      {(known) => <PlanCostsView {...props} costs={known()} />}
    </Show>
  );
}
