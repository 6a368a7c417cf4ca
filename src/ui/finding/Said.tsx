import { createEffect, createSignal, on, onCleanup, type JSX, type ParentProps } from 'solid-js';
import { useWork } from '../work';

/** Milliseconds without a change after which a finding is read out: more than from one key to the next. */
const rest = 1000;

/**
 * Where a finding stands. Who hears the page is told of a new one once it has stood for a moment, not at each key:
 * until then it is said to be busy (WAI-ARIA 1.2, aria-busy).
 */
export function Said(props: ParentProps): JSX.Element {
  const { live } = useWork();
  const [busy, setBusy] = createSignal(false);
  createEffect(
    on(
      live.version,
      () => {
        setBusy(true);
        const timer = setTimeout(() => setBusy(false), rest);
        onCleanup(() => clearTimeout(timer));
      },
      { defer: true },
    ),
  );
  return (
    <div class="said" aria-live="polite" aria-busy={busy()}>
      {props.children}
    </div>
  );
}
