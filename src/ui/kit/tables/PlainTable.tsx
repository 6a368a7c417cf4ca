import type { JSX } from 'solid-js';
import type { DataTable } from '../../../present/table/dataTable';
import { TakeOut } from '../takeOut/TakeOut';

interface PlainTableProps {
  readonly class?: string | undefined;
  /** The table's caption where the table is long and made only once it is taken out. */
  readonly caption?: string;
  /** What the table's elements are made from, for taking it out. */
  readonly table: () => DataTable;
  /** Whether figures are still to come. */
  readonly waits?: boolean | undefined;
  readonly children: JSX.Element;
}

/** A table, and below it the button that takes it out. */
export function PlainTable(props: PlainTableProps): JSX.Element {
  return (
    <>
      <table class={props.class}>{props.children}</table>
      <TakeOut caption={props.caption ?? props.table().caption} table={props.table} waits={props.waits} />
    </>
  );
}
