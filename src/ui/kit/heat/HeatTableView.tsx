import type { TableRequest } from '../../../present/heat/table';
import { createMemo, For, Show, type Accessor, type JSX } from 'solid-js';
import type { Decimal } from '../../../core/number';
import type { Grid } from '../../../study/grid';
import { localFormat } from '../../app/preferences/localFormat';
import { exactRows, heatDataTable, heatTable, type HeatTable } from '../../../present/heat/table';
import { withUnit } from '../../../present/text/withUnit';
import { createProgressive } from '../background/progressive';
import { Waiting } from '../sections/Waiting';
import { TableRoom } from '../tables/TableRoom';
import { commonTexts } from '../../../present/text/commonTexts';

interface HeatTableViewProps {
  readonly ask: TableRequest;
}

const always: Accessor<boolean> = () => true;

/** A table of a result over two inputs in exact numbers, which can be saved as a file. */
export function HeatTableView(props: HeatTableViewProps): JSX.Element {
  const worked = createProgressive(
    () => props.ask,
    always,
    ({ surface, across, down }) => exactRows(surface, across.places, down.places),
  );
  return (
    <Show when={worked()} fallback={<Waiting>{commonTexts.working}</Waiting>}>
      {(found) => <Filled ask={found().of} grid={found().found} done={found().done} />}
    </Show>
  );
}

function Filled(props: { ask: TableRequest; grid: Grid<Decimal>; done: boolean }): JSX.Element {
  const table = createMemo(() => heatTable(props.grid, props.ask, props.ask.result, props.ask.isWorse, localFormat));
  return (
    <TableRoom
      label={props.ask.caption}
      class="heat-table"
      table={() => heatDataTable(table(), props.grid, props.ask, props.ask.caption)}
      waits={!props.done}>
      <caption>
        {props.ask.caption};{' '}
        <span class="below-mark" aria-hidden="true">
          ▼
        </span>{' '}
        {props.ask.worseText}
      </caption>
      <HeatHead ask={props.ask} across={table().across} />
      <tbody>
        <For each={table().rows}>{(row) => <HeatRow row={row} worseText={props.ask.worseText} />}</For>
      </tbody>
    </TableRoom>
  );
}

function HeatHead(props: { ask: TableRequest; across: HeatTable['across'] }): JSX.Element {
  return (
    <thead>
      <tr>
        <td class="words">{withUnit(props.ask.down.cell)} ↓</td>
        <th scope="colgroup" colspan={props.across.length} class="words">
          {withUnit(props.ask.across.cell)} →
        </th>
      </tr>
      <tr>
        <td />
        <For each={props.across}>
          {({ text, today }) => (
            <th scope="col">
              {text}
              <Show when={today}>
                <span class="today">{commonTexts.today}</span>
              </Show>
            </th>
          )}
        </For>
      </tr>
    </thead>
  );
}

function HeatRow(props: { row: HeatTable['rows'][number]; worseText: string }): JSX.Element {
  return (
    <tr>
      <th scope="row">
        {props.row.head.text}
        <Show when={props.row.head.today}>
          {' '}
          <span class="today">{commonTexts.today}</span>
        </Show>
      </th>
      <For each={props.row.cells}>
        {({ text, worse }) => (
          <td classList={{ worse }}>
            <Show when={worse}>
              <span class="below-mark" role="img" aria-label={props.worseText}>
                ▼
              </span>{' '}
            </Show>
            {text ?? <span class="unknown">{commonTexts.cannotCompute}</span>}
          </td>
        )}
      </For>
    </tr>
  );
}
