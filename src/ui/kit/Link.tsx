import type { JSX } from 'solid-js';

/** A link in a sentence; pressing it calls back. */
export function Link(props: { onPress: () => void; class?: string; children: JSX.Element }): JSX.Element {
  return (
    <button type="button" class={`link ${props.class ?? ''}`} onClick={() => props.onPress()}>
      {props.children}
    </button>
  );
}
