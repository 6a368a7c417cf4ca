import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Problem } from '../../core/problem';
import type { Cell } from '../../model/cell';
import type { Calendar } from '../../trade/calendar';
import { isoDate } from '../../trade/civilDate';
import { calendarWeeks, type CalendarWeek, type Staff, type WorkStep } from '../../trade/labour';
import { Behind } from '../finding/Behind';
import { textOf } from '../finding/phrase';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { Cautions } from './Cautions';
import { aligned, whole } from './counts';
import { createDates } from './dates';
import { DateField } from './DateField';
import { Faults } from './Faults';
import { YearPicture } from './YearPicture';
import { yearTold } from './yearTold';

const dates = createDates(here.locale);
/** Hours needed are shown, not hours paid: nobody is on the staff. */
const nobody: Staff = { spare: 0, guaranteed: 0, person: 0, beyond: 'overtime' };

interface YearProps {
  readonly year: Calendar;
  readonly boards: number;
  readonly cells: readonly Cell[];
  /** Faults that are told already. */
  readonly known: readonly Problem[];
  readonly steps: readonly WorkStep[];
  readonly setStart: (day: number) => void;
  readonly goTo: (cell: number) => void;
}

/** A year from an empty bed, in words, as a picture and by week. */
export function Year(props: YearProps): JSX.Element {
  const told = createMemo(() => yearTold(props.year, props.boards, here, dates));
  const seasonal = createMemo(() => {
    const known = new Set(props.known.map(({ message }) => message));
    return props.year.faults.filter(({ message }) => !known.has(message));
  });
  return (
    <section aria-labelledby="beds-year">
      <h3 id="beds-year">A year on the water</h3>
      <div class="asking">
        <DateField label="First day, the bed empty" day={props.year.start} choose={props.setStart} />
      </div>
      <Faults faults={seasonal()} cells={props.cells} quiet={false} goTo={props.goTo} />
      <Show when={props.year.batches.length > 0}>
        <p><Sentence phrase={told()} /></p>
        <Faults faults={props.year.notices} cells={props.cells} quiet={true} goTo={props.goTo} />
        <YearPicture year={props.year} boards={props.boards} label={textOf(told())} />
        <Behind summary="Harvest and hours by week">
          <WeekTable year={props.year} steps={props.steps} />
        </Behind>
      </Show>
      <Cautions topics={['electricity', 'food']} />
    </section>
  );
}

function WeekTable(props: { year: Calendar; steps: readonly WorkStep[] }): JSX.Element {
  const weeks = createMemo(() => calendarWeeks(props.year, props.steps, nobody));
  const peak = ({ firstDay, days }: CalendarWeek): number =>
    Math.max(...props.year.pictures.slice(firstDay, firstDay + days).map(({ inUse }) => inUse));
  const over = ({ firstDay, days }: CalendarWeek): number =>
    props.year.overFull.filter((day) => day >= firstDay && day < firstDay + days).length;
  return (
    <div class="table-room" role="region" aria-label="Table of the weeks" tabindex="0">
      <table>
        <thead>
          <tr>
            <th scope="col">week from</th>
            <th scope="col">finished plants</th>
            <th scope="col">most boards in use</th>
            <th scope="col">over-full days</th>
            <th scope="col">hours</th>
          </tr>
        </thead>
        <tbody>
          <For each={weeks()}>
            {(week) => (
              <tr>
                <th scope="row">{isoDate(props.year.start + week.firstDay)}</th>
                <td>{whole(week.finished, here)}</td>
                <td>{whole(peak(week), here)}</td>
                <td>{over(week) === 0 ? '' : over(week)}</td>
                <td>{aligned(week.needed, 1, here)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </div>
  );
}
