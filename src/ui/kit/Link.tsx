import type { JSX } from 'solid-js';

/** A word in a sentence that leads somewhere or does something. */
export function Link(props: { onPress: () => void; class?: string; children: JSX.Element }): JSX.Element {
  return (
    <button type="button" class={`link ${props.class ?? ''}`} onClick={() => props.onPress()}>
      {props.children}
    </button>
  );
}
