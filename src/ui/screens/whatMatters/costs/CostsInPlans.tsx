import { createMemo, lazy, Show, type JSX } from 'solid-js';
import { hasFurther } from '../../../../present/allPlans/plans';
import { allPlansTexts } from '../../../../present/allPlans/texts';
import type { ScreenProps } from '../../../app/screenProps';
import { LazySection } from '../../../kit/sections/LazySection';

const PlanCostsPart = lazy(async () => ({ default: (await import('./PlanCostsPart')).PlanCostsPart }));

/** What each plan spends by kind, in a model with more plans than the two compared; nothing without cost lines. */
export function CostsInPlans(props: ScreenProps): JSX.Element {
  const compared = createMemo(() => [props.against, props.plan].filter((plan) => plan !== undefined));
  const isShown = createMemo(() => {
    const { plans, cells } = props.store.shape();
    return hasFurther(plans.length, compared()) && cells.some(({ budget }) => budget === 'cost');
  });
  return (
    <Show when={isShown()}>
      <LazySection id="plan-costs" class="plan-costs" heading={allPlansTexts.costs}>
        {() => <PlanCostsPart {...props} compared={compared()} />}
      </LazySection>
    </Show>
  );
}
