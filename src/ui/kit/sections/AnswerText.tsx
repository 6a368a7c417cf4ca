import { Show, type JSX } from 'solid-js';
import type { Phrase } from '../../../present/text/phrase';
import { Sentence } from './Sentence';

/** What a screen found, large, and below it what else is worth knowing, if anything. */
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
