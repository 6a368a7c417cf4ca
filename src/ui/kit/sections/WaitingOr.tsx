import { Show, type JSX } from 'solid-js';
import { Waiting } from './Waiting';

interface WaitingOrProps {
  readonly class?: string;
  /** Why the answer will not come; blank while it still may. */
  readonly reason: string;
  readonly children: JSX.Element;
}

/** Stands where an answer is still to come, or says why it will not. */
export function WaitingOr(props: WaitingOrProps): JSX.Element {
  return (
    <Show when={props.reason} fallback={<Waiting class={props.class ?? 'quiet'}>{props.children}</Waiting>}>
      <p class={props.class ?? 'quiet'} role="status">
        {props.reason}
      </p>
    </Show>
  );
}
