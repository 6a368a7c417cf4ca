import { createMemo, Show, type JSX } from 'solid-js';
import type { Problem } from '../../../../core/problem';
import type { Cell } from '../../../../model/cell';
import type { Values } from '../../../../model/values';
import type { Calendar } from '../../../../trade/calendar';
import { calendarWeeks, type Staff, type WorkStep } from '../../../../trade/labour';
import type { CropNames } from '../../../../present/beds/stageNames';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { sentences, textOf } from '../../../../present/text/phrase';
import { Sentence } from '../../../kit/sections/Sentence';
import { localFormat } from '../../../app/preferences/localFormat';
import { Cautions } from '../../../kit/sections/Cautions';
import { createDates } from '../../../../present/text/dates';
import { DateField } from '../../../kit/fields/DateField';
import { FaultLinks } from '../FaultLinks';
import { paidHoursSentence } from '../../../../present/beds/year/paidHours';
import { WeekTable } from './WeekTable';
import { YearPicture } from './YearPicture';
import { weeksWorkedSentence } from '../../../../present/beds/year/weeksWorked';
import { yearSentence } from '../../../../present/beds/year/sentences';
import { yearTexts } from '../../../../present/beds/year/texts';

const dates = createDates(localFormat.locale);
/** The staff where no entry is chosen: only hours needed are shown then. */
const nobody: Staff = { spare: 0, guaranteed: 0, person: 0, beyond: 'overtime' };

interface YearProps {
  readonly year: Calendar;
  readonly boards: number;
  readonly names: CropNames;
  readonly cells: readonly Cell[];
  /** The plan's numbers. */
  readonly values: Values | undefined;
  /** Faults that are shown elsewhere already. */
  readonly known: readonly Problem[];
  readonly steps: readonly WorkStep[];
  /** Undefined where no entry is chosen for staff hours. */
  readonly staff: Staff | undefined;
  readonly setStart: (day: number) => void;
  readonly goTo: (cell: number) => void;
  /** Shown below the weeks: whose hours are paid. */
  readonly children: JSX.Element;
}

/** A year from an empty bed, in words, as a picture and by week. */
export function Year(props: YearProps): JSX.Element {
  const sentence = createMemo(() => yearSentence(props.year, props.boards, props.names, localFormat, dates));
  const weeks = createMemo(() => calendarWeeks(props.year, props.steps, props.staff ?? nobody));
  const seasonal = createMemo(() => {
    const known = new Set(props.known.map(({ message }) => message));
    return props.year.faults.filter(({ message }) => !known.has(message));
  });
  return (
    <section aria-labelledby="beds-year">
      <h3 id="beds-year">{yearTexts.heading}</h3>
      <div class="asking">
        <DateField label={yearTexts.start} day={props.year.start} choose={props.setStart} />
      </div>
      <FaultLinks faults={seasonal()} cells={props.cells} quiet={false} goTo={props.goTo} />
      <Show when={props.year.batches.length > 0}>
        <p>
          <Sentence phrase={sentences(sentence(), weeksWorkedSentence(props.cells, props.values, localFormat))} />
        </p>
        <FaultLinks faults={props.year.notices} cells={props.cells} quiet={true} goTo={props.goTo} />
        <YearPicture year={props.year} boards={props.boards} names={props.names} label={textOf(sentence())} />
        <Show when={props.steps.length > 0 ? props.staff : undefined}>
          {(staff) => (
            <p class="hours-paid">
              <Sentence phrase={paidHoursSentence(weeks(), staff(), localFormat)} />
            </p>
          )}
        </Show>
        <NumbersBehind summary={yearTexts.numbers}>
          <WeekTable year={props.year} weeks={weeks()} names={props.names} paid={props.staff !== undefined} />
        </NumbersBehind>
        {props.children}
      </Show>
      <Cautions topics={['electricity', 'food']} />
    </section>
  );
}
