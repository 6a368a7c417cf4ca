import { For, Show, type JSX } from 'solid-js';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
import type { TornadoRow } from '../../../../present/whatMatters/tornado/rows';
import { tornadoHeads, tornadoTexts } from '../../../../present/whatMatters/tornado/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

/** The bars' numbers as a table. */
export function TornadoTable(props: {
  rows: readonly TornadoRow[];
  unit: string;
  goTo: (cell: number) => void;
}): JSX.Element {
  return (
    <NumbersBehind summary={commonTexts.numbersAsTable}>
      <HeadedTable label={tornadoTexts.tableRegion} heads={tornadoHeads(props.unit)}>
        <For each={props.rows}>{(row) => <TableRow row={row} goTo={props.goTo} />}</For>
      </HeadedTable>
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
          <span class="unit">{tornadoTexts.percentiles}</span>
        </Show>
      </th>
      <td>{props.row.low.input}</td>
      <td>{props.row.high.input}</td>
      <td>{props.row.low.result ?? commonTexts.cannotCompute}</td>
      <td>{props.row.high.result ?? commonTexts.cannotCompute}</td>
      <td>{props.row.swing ?? commonTexts.unknown}</td>
      <td>{props.row.flips ? tornadoTexts.flips : ''}</td>
    </tr>
  );
}
