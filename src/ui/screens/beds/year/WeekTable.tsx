import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Calendar } from '../../../../trade/calendar';
import { isoDate } from '../../../../trade/civilDate';
import type { CalendarWeek } from '../../../../trade/labour';
import type { CropNames } from '../../../../present/beds/stageNames';
import { localFormat } from '../../../app/preferences/localFormat';
import { TableRoom } from '../../../kit/tables/TableRoom';
import { alignedNumber, whole } from '../../../../present/text/quantities';
import { hoursOfYear } from '../../../../present/beds/year/paidHours';
import { yearTexts } from '../../../../present/beds/year/texts';

interface WeekTableProps {
  readonly year: Calendar;
  readonly weeks: readonly CalendarWeek[];
  readonly names: CropNames;
  /** Whether there are staff hours, so that hours paid differ from hours needed. */
  readonly paid: boolean;
}

function hoursIn(value: number): string {
  return alignedNumber(value, 1, localFormat);
}

/** Harvest, boards and hours by week, and the hours of the year. */
export function WeekTable(props: WeekTableProps): JSX.Element {
  const all = createMemo(() => hoursOfYear(props.weeks));
  const finished = (): number => props.weeks.reduce((sum, week) => sum + week.finished, 0);
  const peak = ({ firstDay, days }: CalendarWeek): number =>
    Math.max(...props.year.pictures.slice(firstDay, firstDay + days).map(({ inUse }) => inUse));
  const over = ({ firstDay, days }: CalendarWeek): number =>
    props.year.overFull.filter((day) => day >= firstDay && day < firstDay + days).length;
  return (
    <TableRoom label={yearTexts.table} class="weeks">
      <thead>
        <tr>
          <th scope="col">{yearTexts.week}</th>
          <th scope="col">{yearTexts.finished(props.names)}</th>
          <th scope="col">{yearTexts.most(props.names)}</th>
          <th scope="col">{yearTexts.overFullDays}</th>
          <th scope="col">{yearTexts.needed}</th>
          <Show when={props.paid}>
            <th scope="col">{yearTexts.paid}</th>
            <th scope="col">{yearTexts.idle}</th>
            <th scope="col">{yearTexts.overtime}</th>
          </Show>
        </tr>
      </thead>
      <tbody>
        <For each={props.weeks}>
          {(week) => (
            <tr>
              <th scope="row">{isoDate(props.year.start + week.firstDay)}</th>
              <td>{whole(week.finished, localFormat)}</td>
              <td>{whole(peak(week), localFormat)}</td>
              <td>{over(week) === 0 ? '' : over(week)}</td>
              <td>{hoursIn(week.needed)}</td>
              <Show when={props.paid}>
                <td>{hoursIn(week.paid.paid)}</td>
                <td>{hoursIn(week.paid.idle)}</td>
                <td>{hoursIn(week.paid.overtime)}</td>
              </Show>
            </tr>
          )}
        </For>
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{yearTexts.year}</th>
          <td>{whole(finished(), localFormat)}</td>
          <td />
          <td>{props.year.overFull.length || ''}</td>
          <td>{hoursIn(all().needed)}</td>
          <Show when={props.paid}>
            <td>{hoursIn(all().paid)}</td>
            <td>{hoursIn(all().idle)}</td>
            <td>{hoursIn(all().overtime)}</td>
          </Show>
        </tr>
      </tfoot>
    </TableRoom>
  );
}
