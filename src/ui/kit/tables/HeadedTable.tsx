import { createMemo, Index, Show, type JSX } from 'solid-js';
import type { DataCell, DataColumn, DataTable } from '../../../present/table/dataTable';
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

/** The places of the columns that the screen shows. */
function shownPlaces(columns: readonly DataColumn[]): number[] {
  return columns.flatMap(({ aside = false }, k) => (aside ? [] : [k]));
}

/** A table of one row of heads and of rows below them, in a room that scrolls. */
export function HeadedTable(props: HeadedTableProps): JSX.Element {
  // Made once for all rows: a table that is given by a function would be made anew for each of them.
  const table = createMemo(() => props.table);
  return (
    <TableRoom label={props.label} class={props.class} table={table} waits={props.waits}>
      <Show when={props.captioned !== false}>
        <caption>{table().caption}</caption>
      </Show>
      <thead>
        <tr>
          <Index each={shownPlaces(table().columns)}>{(k) => <Head column={table().columns[k()]!} />}</Index>
        </tr>
      </thead>
      <tbody>
        <Index each={table().rows}>
          {(row, at) => <Row cells={row()} columns={table().columns} press={props.goTo && (() => props.goTo?.(at))} />}
        </Index>
      </tbody>
      <Show when={table().foot}>
        {(foot) => (
          <tfoot>
            <Index each={foot()}>{(row) => <Row cells={row()} columns={table().columns} press={undefined} />}</Index>
          </tfoot>
        )}
      </Show>
    </TableRoom>
  );
}

function Head(props: { column: DataColumn }): JSX.Element {
  return (
    <Show when={props.column.name} fallback={<td />}>
      <th scope="col" class={props.column.words === true ? 'words' : undefined}>
        {props.column.name}
      </th>
    </Show>
  );
}

function Row(props: {
  cells: readonly DataCell[];
  columns: readonly DataColumn[];
  press: (() => void) | undefined;
}): JSX.Element {
  return (
    <tr>
      <Index each={shownPlaces(props.columns)}>
        {(k, place) => (
          <Show
            when={place > 0}
            fallback={
              <th scope="row">
                <CellText cell={props.cells[k()]!} press={props.press} />
              </th>
            }>
            <td class={props.columns[k()]!.words === true ? 'words' : undefined}>
              <CellText cell={props.cells[k()]!} press={undefined} />
            </td>
          </Show>
        )}
      </Index>
    </tr>
  );
}

function CellText(props: { cell: DataCell; press: (() => void) | undefined }): JSX.Element {
  return (
    <>
      <Show when={props.press} fallback={<bdi>{props.cell.text}</bdi>}>
        {(press) => (
          <Link onPress={press()}>
            <bdi>{props.cell.text}</bdi>
          </Link>
        )}
      </Show>
      <Show when={props.cell.note}>
        {' '}
        <bdi class="unit">{props.cell.note}</bdi>
      </Show>
    </>
  );
}
