import { For, type JSX } from 'solid-js';
import { Behind } from '../finding/Behind';
import { methods } from './methods';

/** How each figure is worked out, from where, and what it cannot do. */
export function Method(): JSX.Element {
  return (
    <Behind summary="How this is worked out">
      <dl class="methods">
        <For each={methods}>
          {({ what, how, source, limits }) => (
            <>
              <dt>{what}</dt>
              <dd>
                <p>{how}</p>
                <p class="quiet">Source: {source}</p>
                <p class="quiet">Limits: {limits}</p>
              </dd>
            </>
          )}
        </For>
      </dl>
    </Behind>
  );
}
