import { Index, Show, type JSX } from 'solid-js';
import { columnTitle, type DataCell, type DataColumn, type DataTable } from '../../../present/table/dataTable';
import { Link } from '../Link';
import { TableRoom } from './TableRoom';

interface HeadedTableProps {
  /** What the table is called where it takes the focus. */
  readonly label: string;
  readonly table: DataTable;
  /** Whether the caption stands above the table; it is named by it all the same where it is taken out. */
  readonly captioned?: boolean;
  readonly class?: string;
  /** Called with the index of a row whose head is pressed; the heads are links then. */
  readonly goTo?: ((row: number) => void) | undefined;
  /** Whether figures are still to come. */
  readonly waits?: boolean | undefined;
}

/** A table of one row of heads and of rows below them, in a room that scrolls. */
export function HeadedTable(props: HeadedTableProps): JSX.Element {
  const shown = (): number[] => props.table.columns.flatMap(({ aside = false }, k) => (aside ? [] : [k]));
  const column = (k: number): DataColumn => props.table.columns[k]!;
  return (
    <TableRoom label={props.label} class={props.class} table={() => props.table} waits={props.waits}>
      <Show when={props.captioned !== false}>
        <caption>{props.table.caption}</caption>
      </Show>
      <thead>
        <tr>
          <Index each={shown()}>{(k) => <Head column={column(k())} />}</Index>
        </tr>
      </thead>
      <tbody>
        <Index each={props.table.rows}>
          {(row, at) => (
            <tr>
              <Index each={shown()}>
                {(k, place) => (
                  <Show
                    when={place > 0}
                    fallback={<RowHead cell={row()[k()]!} press={props.goTo && (() => props.goTo?.(at))} />}>
                    <td class={column(k()).words === true ? 'words' : undefined}>
                      <CellText cell={row()[k()]!} />
                    </td>
                  </Show>
                )}
              </Index>
            </tr>
          )}
        </Index>
      </tbody>
    </TableRoom>
  );
}

function Head(props: { column: DataColumn }): JSX.Element {
  return (
    <Show when={columnTitle(props.column)} fallback={<td />}>
      {(title) => (
        <th scope="col" class={props.column.words === true ? 'words' : undefined}>
          {title()}
        </th>
      )}
    </Show>
  );
}

function RowHead(props: { cell: DataCell; press: (() => void) | undefined }): JSX.Element {
  return (
    <th scope="row">
      <Show when={props.press} fallback={<CellText cell={props.cell} />}>
        {(press) => <Link onPress={press()}>{props.cell.text}</Link>}
      </Show>
      <Show when={props.press && props.cell.note}>
        {' '}
        <span class="unit">{props.cell.note}</span>
      </Show>
    </th>
  );
}

function CellText(props: { cell: DataCell }): JSX.Element {
  return (
    <>
      {props.cell.text}
      <Show when={props.cell.note}>
        {' '}
        <span class="unit">{props.cell.note}</span>
      </Show>
    </>
  );
}
