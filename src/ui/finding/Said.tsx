import type { JSX, ParentProps } from 'solid-js';
import { useWork } from '../work';

/**
 * Where a finding stands. Who hears the page is told of a new one once it has stood for a moment, not at each key:
 * until then it is said to be busy (WAI-ARIA 1.2, aria-busy).
 */
export function Said(props: ParentProps): JSX.Element {
  const { busy } = useWork();
  return (
    <div class="said" aria-live="polite" aria-busy={busy()}>
      {props.children}
    </div>
  );
}
