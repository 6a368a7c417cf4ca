import { For, Show, type JSX } from 'solid-js';
import type { CautionTopic } from '../../../trade/cautions';
import { Cautions } from '../../kit/sections/Cautions';
import type { Failing } from '../../../present/page/failingChecks';
import { Link } from '../../kit/Link';

/** The checks that do not hold. */
export function Warnings(props: { failing: readonly Failing[]; goTo: (cell: number) => void }): JSX.Element {
  return (
    <Show when={props.failing.length > 0}>
      <ul class="case-warnings">
        <For each={props.failing}>
          {({ cell, letters }) => (
            <li class="message fault">
              Plan {letters}: <Link onPress={() => props.goTo(cell.id)}>{cell.label}</Link>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}

/** What a case cannot say. */
export function Limits(props: { invented: string; topics: readonly CautionTopic[] }): JSX.Element {
  return (
    <section class="part case-limits" aria-labelledby="case-limits">
      <h3 id="case-limits">What this is not</h3>
      <Show when={props.invented}>
        <p>{props.invented}</p>
      </Show>
      <p>
        These are estimates for one usual year, made from guesses, and no financial, tax or legal advice: have a
        decision that matters looked at by someone licensed to give it. What the change costs once, what it brings in
        later years, and what is the same in both plans are left out. Local rules on wages and safety decide.
      </p>
      <Show when={props.topics.length > 0}>
        <Cautions topics={props.topics} />
      </Show>
    </section>
  );
}
