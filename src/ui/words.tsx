import { Show, type JSX } from 'solid-js';

/** A word in a sentence that leads somewhere or does something. */
export function Link(props: { onPress: () => void; class?: string; children: JSX.Element }): JSX.Element {
  return (
    <button type="button" class={`link ${props.class ?? ''}`} onClick={() => props.onPress()}>
      {props.children}
    </button>
  );
}

/** The letter of a plan, in its colour; nothing where there is only one plan. */
export function PlanLetter(props: { letter: string }): JSX.Element {
  return (
    <Show when={props.letter}>
      <span class="remark-letter" data-letter={props.letter}>
        {props.letter}
      </span>
    </Show>
  );
}

/** Puts a text into its place; the page is left alone where it stands there already. */
export function write(place: Text, text: string): void {
  if (place.data !== text) place.data = text;
}
