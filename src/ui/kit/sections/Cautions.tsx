import { For, Show, type JSX } from 'solid-js';
import { cautionsFor, type CautionTopic } from '../../../present/page/cautions';
import { cautionTexts } from '../../../present/page/cautionTexts';
import './caution.css';

/** Cautions about the work described above, each with its source. */
export function Cautions(props: { topics: readonly CautionTopic[] }): JSX.Element {
  return (
    <div class="cautions" role="group" aria-label={cautionTexts.heading}>
      <For each={cautionsFor(props.topics)}>
        {({ title, text, source }) => (
          <details>
            <summary>{title}</summary>
            <p>{text}</p>
            <Show when={source} fallback={<p class="source">{cautionTexts.noSource}</p>}>
              <p class="source">{cautionTexts.source(source)}</p>
            </Show>
          </details>
        )}
      </For>
    </div>
  );
}
