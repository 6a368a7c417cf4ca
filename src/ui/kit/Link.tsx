import type { JSX } from 'solid-js';

/** A link in a sentence; pressing it calls back. Mostly it is a label, which may be written from right to left. */
export function Link(props: { onPress: () => void; class?: string; children: JSX.Element }): JSX.Element {
  return (
    <button type="button" dir="auto" class={`link ${props.class ?? ''}`} onClick={() => props.onPress()}>
      {props.children}
    </button>
  );
}
