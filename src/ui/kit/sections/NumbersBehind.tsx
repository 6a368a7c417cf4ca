import { createSignal, Show, type JSX } from 'solid-js';

/** The numbers of a chart as tables. They are made only while unfolded, so that keystrokes do not wait for them. */
export function NumbersBehind(props: { summary: string; children: JSX.Element }): JSX.Element {
  const [open, setOpen] = createSignal(false);
  return (
    <details class="numbers-behind" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{props.summary}</summary>
      <Show when={open()}>{props.children}</Show>
    </details>
  );
}
