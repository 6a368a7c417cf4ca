import { For, Show, type JSX } from 'solid-js';
import type { CautionTopic } from '../../../present/page/cautions';
import { Cautions } from '../../kit/sections/Cautions';
import type { Failing } from '../../../present/page/failingChecks';
import { LinkedSentence } from '../../kit/sections/LinkedSentence';
import { caseTexts } from '../../../present/theCase/texts';

/** The checks that do not hold. */
export function Warnings(props: { failing: readonly Failing[]; goTo: (cell: number) => void }): JSX.Element {
  return (
    <Show when={props.failing.length > 0}>
      <ul class="case-warnings">
        <For each={props.failing}>
          {({ cell, letters }) => (
            <li class="message fault">
              <LinkedSentence phrase={caseTexts.failing(letters, cell.label)} onPress={() => props.goTo(cell.id)} />
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}

/** The limits of a case. */
export function Limits(props: { invented: string; topics: readonly CautionTopic[] }): JSX.Element {
  return (
    <section class="part case-limits" aria-labelledby="case-limits">
      <h3 id="case-limits">{caseTexts.limits}</h3>
      <Show when={props.invented}>
        <p>{props.invented}</p>
      </Show>
      <p>{caseTexts.noAdvice}</p>
      <Show when={props.topics.length > 0}>
        <Cautions topics={props.topics} />
      </Show>
    </section>
  );
}
