import { createMemo, For, Index, type JSX } from 'solid-js';
import { localFormat } from '../../../app/preferences/localFormat';
import { Link } from '../../../kit/Link';
import { TableRoom } from '../../../kit/tables/TableRoom';
import type { ScheduleView } from '../../../../present/beds/stages/schedules';
import { stageLines, stageRows, stagesTable } from '../../../../present/beds/stages/stageRows';
import { stageTableTexts } from '../../../../present/beds/stages/stageTableTexts';
import { stageName } from '../../../../present/beds/stageNames';

/** The figures of the beds as a whole, and of each stage. */
export function StageTable(props: { view: ScheduleView; goTo: (cell: number) => void }): JSX.Element {
  const rows = createMemo(() => stageRows(props.view, localFormat));
  return (
    <>
      <dl class="bed-lines">
        <Index each={stageLines(props.view, localFormat)}>
          {(line) => (
            <div class="bed-line">
              <dt>
                {line().label}
                <span class="leader" aria-hidden="true" />
              </dt>
              <dd>
                {line().value} <span class="unit">{line().unit}</span>
              </dd>
            </div>
          )}
        </Index>
      </dl>
      <TableRoom label={stageTableTexts.table} class="stages" table={() => stagesTable(rows(), props.view)}>
        <thead>
          <tr>
            <td />
            <For each={props.view.planSchedule.schedule.stages}>
              {({ number }) => {
                const cell = (): number | undefined => props.view.planSchedule.parts.get(`stage ${number} time`)?.id;
                const name = (): string => stageName(props.view.planSchedule.names, number - 1);
                return (
                  <th scope="col">
                    <Link onPress={() => props.goTo(cell()!)}>{name()}</Link>
                    <span class="stage-number">{stageTableTexts.stage(number)}</span>
                  </th>
                );
              }}
            </For>
          </tr>
        </thead>
        <tbody>
          <Index each={rows()}>
            {(row) => (
              <tr>
                <th scope="row">
                  <span class="led">
                    {row().label}
                    <span class="leader" aria-hidden="true" />
                  </span>
                </th>
                <Index each={row().values}>{(value) => <td>{value().text}</td>}</Index>
              </tr>
            )}
          </Index>
        </tbody>
      </TableRoom>
    </>
  );
}
