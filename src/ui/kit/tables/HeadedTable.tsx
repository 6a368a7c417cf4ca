import { Index, Show, type JSX } from 'solid-js';
import { TableRoom } from './TableRoom';

/** What a column is headed with; one of words is set as such. */
type ColumnHead = string | { readonly words: string };

interface HeadedTableProps {
  /** What the table is called where it takes the focus. */
  readonly label: string;
  readonly caption?: string;
  /** One a column; a blank one heads nothing. */
  readonly heads: readonly ColumnHead[];
  /** The rows. */
  readonly children: JSX.Element;
}

/** A table of one row of heads and of rows below them, in a room that scrolls. */
export function HeadedTable(props: HeadedTableProps): JSX.Element {
  return (
    <TableRoom label={props.label}>
      <Show when={props.caption !== undefined}>
        <caption>{props.caption}</caption>
      </Show>
      <thead>
        <tr>
          <Index each={props.heads}>{(head) => <Head head={head()} />}</Index>
        </tr>
      </thead>
      <tbody>{props.children}</tbody>
    </TableRoom>
  );
}

function Head(props: { head: ColumnHead }): JSX.Element {
  const text = (): string => (typeof props.head === 'string' ? props.head : props.head.words);
  return (
    <Show when={text()} fallback={<td />}>
      <th scope="col" class={typeof props.head === 'string' ? undefined : 'words'}>
        {text()}
      </th>
    </Show>
  );
}
