import { For, type JSX } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import type { Phrase } from '../../../present/text/phrase';

/** A phrase whose names are set as quotations or as code. */
export function MarkedSentence(props: { phrase: Phrase; as: 'q' | 'code' }): JSX.Element {
  return (
    <For each={props.phrase}>
      {({ text, strong }) => (strong ? <Dynamic component={props.as}>{text}</Dynamic> : text)}
    </For>
  );
}
