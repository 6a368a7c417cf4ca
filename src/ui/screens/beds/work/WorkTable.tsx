import { createMemo, For, Index, type JSX } from 'solid-js';
import type { CropNames } from '../../../../present/beds/stageNames';
import type { WorkTask } from '../../../../trade/workList';
import { localFormat } from '../../../app/preferences/localFormat';
import { TableRoom } from '../../../kit/tables/TableRoom';
import { createDates } from '../../../../present/text/dates';
import { allHours, workDays, workTable } from '../../../../present/beds/work/workRows';
import { weekTexts } from '../../../../present/beds/work/weekTexts';

const dates = createDates(localFormat.locale);

/** A week's work day by day, in the order of a working day. */
export function WorkTable(props: { list: readonly WorkTask[]; names: CropNames }): JSX.Element {
  const days = createMemo(() => workDays(props.list, props.names, localFormat, dates));
  const total = createMemo(() => allHours(props.list, localFormat));
  return (
    <TableRoom label={weekTexts.table} class="work" table={() => workTable(days(), total(), props.names)}>
      <thead>
        <tr>
          <th scope="col">{weekTexts.day}</th>
          <th scope="col" class="what">
            {weekTexts.what}
          </th>
          <th scope="col">{props.names.plant.many}</th>
          <th scope="col">{props.names.board.many}</th>
          <th scope="col">{weekTexts.hours}</th>
        </tr>
      </thead>
      <For each={days()}>
        {({ day, rows }) => (
          <tbody>
            <For each={rows}>
              {(row, i) => (
                <tr>
                  {i() === 0 && (
                    <th scope="rowgroup" rowspan={rows.length}>
                      {day}
                    </th>
                  )}
                  <td class="what">{row.what}</td>
                  <Index each={row.figures}>{(cell) => <td>{cell().text}</td>}</Index>
                </tr>
              )}
            </For>
          </tbody>
        )}
      </For>
      <tfoot>
        <tr>
          <th scope="row" colspan="4">
            {weekTexts.allHours}
          </th>
          <td>{total().text}</td>
        </tr>
      </tfoot>
    </TableRoom>
  );
}
