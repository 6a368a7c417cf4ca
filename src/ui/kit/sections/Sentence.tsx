import { Index, Show, type JSX } from 'solid-js';
import type { Phrase } from '../../../present/text/phrase';

/**
 * A phrase in which names and numbers are set strong. A name written from right to left stands apart, so that what is
 * around it keeps its order.
 */
export function Sentence(props: { phrase: Phrase }): JSX.Element {
  return (
    <Index each={props.phrase}>
      {(part) => (
        <Show when={part().strong} fallback={<span>{part().text}</span>}>
          <b dir="auto">{part().text}</b>
        </Show>
      )}
    </Index>
  );
}
