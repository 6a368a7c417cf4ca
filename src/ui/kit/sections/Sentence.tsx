import { Index, Show, type JSX } from 'solid-js';
import type { Phrase } from '../../../present/text/phrase';

/** A phrase in which names and numbers are set strong. */
export function Sentence(props: { phrase: Phrase }): JSX.Element {
  return (
    <Index each={props.phrase}>
      {(part) => (
        <Show when={part().strong} fallback={<span>{part().text}</span>}>
          <b>{part().text}</b>
        </Show>
      )}
    </Index>
  );
}
