import { createMemo, For, type JSX } from 'solid-js';
import type { CropNames } from '../../../../present/beds/stageNames';
import type { WorkTask } from '../../../../trade/workList';
import { localFormat } from '../../../app/preferences/localFormat';
import { TableRoom } from '../../../kit/tables/TableRoom';
import { alignedNumber, whole } from '../../../../present/text/quantities';
import { createDates } from '../../../../present/text/dates';
import { byDay, hoursIn, taskText } from '../../../../present/beds/work/week';
import { weekTexts } from '../../../../present/beds/work/weekTexts';

const dates = createDates(localFormat.locale);

/** A week's work day by day, in the order of a working day. */
export function WorkTable(props: { list: readonly WorkTask[]; names: CropNames }): JSX.Element {
  const days = createMemo(() => byDay(props.list));
  return (
    <TableRoom label={weekTexts.table} class="work">
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
        {({ day, tasks }) => (
          <tbody>
            <For each={tasks}>
              {(task, i) => (
                <tr>
                  {i() === 0 && (
                    <th scope="rowgroup" rowspan={tasks.length}>
                      {dates.short(day)}
                    </th>
                  )}
                  <td class="what">{taskText(task, props.names)}</td>
                  <td>{task.task === 'wash' ? '' : whole(task.plants, localFormat)}</td>
                  <td>{whole(task.boards, localFormat)}</td>
                  <td>{alignedNumber(task.hours, 2, localFormat)}</td>
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
          <td>{alignedNumber(hoursIn(props.list), 2, localFormat)}</td>
        </tr>
      </tfoot>
    </TableRoom>
  );
}
