import { For, Show, type JSX } from 'solid-js';
import type { Phrase } from './phrase';

/** A phrase whose names and numbers stand out. */
export function Sentence(props: { phrase: Phrase }): JSX.Element {
  return (
    <For each={props.phrase}>
      {({ text, strong }) => <Show when={strong} fallback={text}><b>{text}</b></Show>}
    </For>
  );
}
