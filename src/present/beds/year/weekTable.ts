import type { Calendar } from '../../../trade/calendar';
import { isoDate } from '../../../trade/civilDate';
import type { CalendarWeek } from '../../../trade/labour';
import { daysPerWeek } from '../../../trade/week';
import { figure, words, type DataCell, type DataTable } from '../../table/dataTable';
import type { Format } from '../../text/numberFormat';
import { alignedNumber, whole } from '../../text/quantities';
import type { CropNames } from '../stageNames';
import { hoursOfYear } from './paidHours';
import { yearTexts } from './texts';

/** What the table of the weeks is made from. */
export interface WeeksOfYear {
  readonly year: Calendar;
  readonly weeks: readonly CalendarWeek[];
  readonly names: CropNames;
  /** Whether there are staff hours, so that hours paid differ from hours needed. */
  readonly paid: boolean;
}

/** Harvest, boards and hours by week, and the hours of the year. */
export function weekTable({ year, weeks, names, paid }: WeeksOfYear, format: Format): DataTable {
  const count = (value: number): DataCell => figure(whole(value, format), value);
  const hours = (value: number): DataCell => figure(alignedNumber(value, 1, format), value);
  const days = (value: number): DataCell => figure(value === 0 ? '' : count(value).text, value);
  const staff = (of: Pick<CalendarWeek['paid'], 'idle' | 'overtime' | 'paid'>): DataCell[] =>
    paid ? [of.paid, of.idle, of.overtime].map(hours) : [];
  const peak = ({ firstDay }: CalendarWeek): number =>
    Math.max(...year.pictures.slice(firstDay, firstDay + daysPerWeek).map(({ inUse }) => inUse));
  const over = ({ firstDay }: CalendarWeek): number =>
    year.overFull.filter((day) => day >= firstDay && day < firstDay + daysPerWeek).length;
  const all = hoursOfYear(weeks);
  const finished = weeks.reduce((sum, week) => sum + week.finished, 0);
  const heads = [
    yearTexts.week,
    yearTexts.finished(names),
    yearTexts.most(names),
    yearTexts.overFullDays,
    yearTexts.needed,
    ...(paid ? [yearTexts.paid, yearTexts.idle, yearTexts.overtime] : []),
  ];
  return {
    caption: yearTexts.numbers,
    columns: heads.map((name) => ({ name })),
    rows: weeks.map((week) => [
      words(isoDate(year.start + week.firstDay)),
      count(week.finished),
      count(peak(week)),
      days(over(week)),
      hours(week.needed),
      ...staff(week.paid),
    ]),
    foot: [
      [
        words(yearTexts.weeks(weeks.length)),
        count(finished),
        words(''),
        days(year.overFull.length),
        hours(all.needed),
        ...staff(all),
      ],
    ],
  };
}
