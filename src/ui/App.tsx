import { createResource, Show, type JSX } from 'solid-js';
import { begin } from './begin';
import type { Keep } from './keep';
import { Bench } from './Bench';

/** The whole page. */
export function App(props: { keep: Keep }): JSX.Element {
  const [beginning] = createResource(() => begin(props.keep));
  return (
    <Show
      when={beginning()}
      fallback={
        <p class="busy" role="status">
          Opening …
        </p>
      }>
      {(ready) => <Bench beginning={ready()} keep={props.keep} />}
    </Show>
  );
}
