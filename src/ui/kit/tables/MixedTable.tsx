import { Index, Show, type JSX } from 'solid-js';

/** What a column is headed with; one of words is set as such. */
type MixedHead = string | { readonly words: string };

interface MixedTableProps {
  /** What the table is called where it takes the focus. */
  readonly label: string;
  readonly caption?: string;
  readonly heads: readonly MixedHead[];
  /** The rows. */
  readonly children: JSX.Element;
}

/** A table whose rows differ in kind, under one row of heads, in a room that scrolls. */
export function MixedTable(props: MixedTableProps): JSX.Element {
  return (
    <div class="table-room" role="region" aria-label={props.label} tabindex="0">
      <table>
        <Show when={props.caption !== undefined}>
          <caption>{props.caption}</caption>
        </Show>
        <thead>
          <tr>
            <Index each={props.heads}>
              {(head) => {
                const own = head();
                return typeof own === 'string' ? (
                  <th scope="col">{own}</th>
                ) : (
                  <th scope="col" class="words">
                    {own.words}
                  </th>
                );
              }}
            </Index>
          </tr>
        </thead>
        <tbody>{props.children}</tbody>
      </table>
    </div>
  );
}
