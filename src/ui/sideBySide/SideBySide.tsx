import { createMemo, lazy, Show, type JSX } from 'solid-js';
import { Part } from '../finding/Part';
import type { ScreenProps } from '../screen';
import { candidates } from './candidates';

const SideAsking = lazy(async () => ({ default: (await import('./SideAsking')).SideAsking }));

/** Several results of one unit against any input, such as the cost of a plant by plug; nothing without two of them. */
export function SideBySide(props: ScreenProps): JSX.Element {
  const planIndex = (): number => (props.choice.whose() === 'against' ? (props.against ?? props.plan) : props.plan);
  const all = createMemo(() => {
    const plan = props.live.shape().plans[planIndex()];
    return plan === undefined ? [] : candidates(props.live.shape(), plan);
  });
  return (
    <Show when={all().length > 1}>
      <Part id="side-by-side" class="side-by-side" heading="Side by side">
        {(inSight) => <SideAsking {...props} planIndex={planIndex()} all={all()} inSight={inSight} />}
      </Part>
    </Show>
  );
}
