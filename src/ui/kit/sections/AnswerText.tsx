import { Show, type JSX } from 'solid-js';
import type { Phrase } from '../../../present/text/phrase';
import { Sentence } from './Sentence';

/** A screen's finding in large type, and further remarks below it. */
export function AnswerText(props: { main: Phrase; more: Phrase }): JSX.Element {
  return (
    <>
      <p class="finding">
        <Sentence phrase={props.main} />
      </p>
      <Show when={props.more.length > 0}>
        <p>
          <Sentence phrase={props.more} />
        </p>
      </Show>
    </>
  );
}
