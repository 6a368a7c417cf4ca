import type { JSX } from 'solid-js';
import type { DataTable } from '../../../present/table/dataTable';
import { TakeOut } from '../takeOut/TakeOut';

interface TableRoomProps {
  /** What the table is called where it takes the focus. */
  readonly label: string;
  readonly class?: string | undefined;
  /** What the table's elements are made from, for taking it out. */
  readonly table: () => DataTable;
  /** Whether figures are still to come. */
  readonly waits?: boolean | undefined;
  readonly children: JSX.Element;
}

/**
 * The room of a table, which scrolls in it where it is wider than the screen; named, as it takes the focus. Below it
 * stands the button that takes the table out.
 */
export function TableRoom(props: TableRoomProps): JSX.Element {
  return (
    <>
      <div class="table-room" role="region" aria-label={props.label} tabindex="0">
        <table class={props.class}>{props.children}</table>
      </div>
      <TakeOut caption={props.table().caption} table={props.table} waits={props.waits} />
    </>
  );
}
