import { createMemo, Show, type JSX } from 'solid-js';
import type { Calendar } from '../../../../trade/calendar';
import { workList } from '../../../../trade/workList';
import type { WorkStep } from '../../../../trade/labour';
import { Sentence } from '../../../kit/sections/Sentence';
import { localFormat } from '../../../app/preferences/localFormat';
import { Cautions } from '../../../kit/sections/Cautions';
import { createDates } from '../../../../present/text/dates';
import { DateField } from '../../../kit/fields/DateField';
import { PrintWord } from '../../../kit/paper/PrintWord';
import { saveCalendarFile, type WorkOf } from './saveWork';
import { WorkTable } from './WorkTable';
import { isWithin, steadyWeek, weekSentence } from '../../../../present/beds/work/week';
import { weekTexts } from '../../../../present/beds/work/weekTexts';

const dates = createDates(localFormat.locale);

interface WorkWeekProps extends WorkOf {
  readonly year: Calendar;
  readonly steps: readonly WorkStep[];
  /** The first day someone chose; undefined: a week in steady running. */
  readonly from: number | undefined;
  readonly setFrom: (day: number) => void;
  /** Shown below the list: how its hours are computed. */
  readonly children: JSX.Element;
}

/** The work on the water in one week. */
export function WorkWeek(props: WorkWeekProps): JSX.Element {
  const from = (): number => props.from ?? steadyWeek(props.year);
  const list = createMemo(() => workList(props.year, props.steps, from()));
  return (
    <section class="work-week" aria-labelledby="beds-work">
      <h3 id="beds-work">{weekTexts.heading}</h3>
      <div class="asking">
        <DateField label={weekTexts.from} day={from()} choose={props.setFrom} />
        <Show when={list().length > 0}>
          <div class="work-buttons">
            <PrintWord part="work">{weekTexts.print}</PrintWord>
            <button type="button" class="word" onClick={() => saveCalendarFile(list(), from(), props)}>
              {weekTexts.saveCalendar}
            </button>
          </div>
        </Show>
      </div>
      <Show
        when={isWithin(props.year, from())}
        fallback={<p class="message">{weekTexts.outside(dates.long(props.year.start))}</p>}>
        <p>
          <Sentence phrase={weekSentence(list(), from(), props.steps.length > 0, props.names, localFormat, dates)} />
        </p>
        <Show when={list().length > 0}>
          <WorkTable list={list()} names={props.names} />
        </Show>
      </Show>
      {props.children}
      <Cautions topics={['hands', 'wages']} />
    </section>
  );
}
