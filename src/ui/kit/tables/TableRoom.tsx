import type { JSX } from 'solid-js';

/** The room of a table, which scrolls in it where it is wider than the screen; named, as it takes the focus. */
export function TableRoom(props: { label: string; class?: string; children: JSX.Element }): JSX.Element {
  return (
    <div class="table-room" role="region" aria-label={props.label} tabindex="0">
      <table class={props.class}>{props.children}</table>
    </div>
  );
}
