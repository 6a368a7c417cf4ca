import { createSignal, Show, type JSX } from 'solid-js';

/** The numbers behind a chart: made only while they are unfolded, so that a keystroke does not wait for them. */
export function NumbersBehind(props: { summary: string; children: JSX.Element }): JSX.Element {
  const [open, setOpen] = createSignal(false);
  return (
    <details class="numbers-behind" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{props.summary}</summary>
      <Show when={open()}>{props.children}</Show>
    </details>
  );
}
