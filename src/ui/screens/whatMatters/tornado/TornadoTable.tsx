import { For, Show, type JSX } from 'solid-js';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import type { TornadoRow } from '../../../../present/whatMatters/tornado/rows';

/** The bars' numbers as a table. */
export function TornadoTable(props: {
  rows: readonly TornadoRow[];
  unit: string;
  goTo: (cell: number) => void;
}): JSX.Element {
  const inUnit = (): string => (props.unit === '' ? '' : `, ${props.unit}`);
  return (
    <NumbersBehind summary="The same numbers as a table">
      <div class="table-room" role="region" aria-label="Table of the bars" tabindex="0">
        <table>
          <thead>
            <tr>
              <th scope="col">entry</th>
              <th scope="col">low</th>
              <th scope="col">high</th>
              <th scope="col">result at low{inUnit()}</th>
              <th scope="col">result at high{inUnit()}</th>
              <th scope="col">swing{inUnit()}</th>
              <th scope="col">answer</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.rows}>{(row) => <TableRow row={row} goTo={props.goTo} />}</For>
          </tbody>
        </table>
      </div>
    </NumbersBehind>
  );
}

function TableRow(props: { row: TornadoRow; goTo: (cell: number) => void }): JSX.Element {
  return (
    <tr>
      <th scope="row">
        <button type="button" class="link" onClick={() => props.goTo(props.row.cell.id)}>
          {props.row.name}
        </button>
        <Show when={props.row.percentiles}>
          {' '}
          <span class="unit">5th and 95th percentile</span>
        </Show>
      </th>
      <td>{props.row.low.input}</td>
      <td>{props.row.high.input}</td>
      <td>{props.row.low.result ?? 'cannot be computed'}</td>
      <td>{props.row.high.result ?? 'cannot be computed'}</td>
      <td>{props.row.swing ?? 'unknown'}</td>
      <td>{props.row.flips ? 'flips' : ''}</td>
    </tr>
  );
}
