import { Show, type JSX } from 'solid-js';

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
