import { createMemo, lazy, Show, type JSX } from 'solid-js';
import { LazySection } from '../../../kit/sections/LazySection';
import type { ScreenProps } from '../../../app/screenProps';
import { quantityGroups } from '../../../../present/results/entryGroups';
import { candidates } from '../../../../present/whatMatters/costs/candidates';
import { whatMattersTexts } from '../../../../present/whatMatters/texts';

const SideAsking = lazy(async () => ({ default: (await import('./CostsAsking')).CostsAsking }));

/**
 * Several results of one unit against one input, such as the cost of a plant by kind of plug; nothing where there are
 * fewer than two, or no input that could move them.
 */
export function CostsSideBySide(props: ScreenProps): JSX.Element {
  const planIndex = (): number => (props.choice.whose() === 'against' ? (props.against ?? props.plan) : props.plan);
  const all = createMemo(() => {
    const shape = props.store.shape();
    const plan = shape.plans[planIndex()];
    return plan === undefined || quantityGroups(shape, plan).length === 0 ? [] : candidates(shape, plan);
  });
  return (
    <Show when={all().length > 1}>
      <LazySection id="side-by-side" class="side-by-side" heading={whatMattersTexts.sideBySide}>
        {(inSight) => <SideAsking {...props} planIndex={planIndex()} all={all()} inSight={inSight} />}
      </LazySection>
    </Show>
  );
}
