import { decimal } from '../../../core/number';
import type { CalendarWeek, Staff } from '../../../trade/labour';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Format } from '../../text/numberFormat';
import { hours, shown } from '../../text/quantities';

/** The hours of all weeks. */
export interface HoursOfYear {
  readonly needed: number;
  readonly paid: number;
  readonly idle: number;
  readonly overtime: number;
}

/** Fewer hours than this are shown as none. */
const shownTenths = 0.05;

export function hoursOfYear(weeks: readonly CalendarWeek[]): HoursOfYear {
  const sum = (of: (week: CalendarWeek) => number): number => weeks.reduce((total, week) => total + of(week), 0);
  return {
    needed: sum(({ needed }) => needed),
    paid: sum(({ paid }) => paid.paid),
    idle: sum(({ paid }) => paid.idle),
    overtime: sum(({ paid }) => paid.overtime),
  };
}

function guaranteeSentence(
  weeks: readonly CalendarWeek[],
  { guaranteed }: Staff,
  idle: number,
  format: Format,
): Phrase {
  if (guaranteed === 0) return [];
  const promised = shown(decimal(guaranteed), 1, format);
  const slack = weeks.filter(({ paid }) => paid.idle >= shownTenths).length;
  if (slack === 0) return say`The ${promised} guaranteed hours are used up in every week.`;
  const all = plainly(String(weeks.length));
  return say`In ${String(slack)} of ${all} weeks the ${promised} guaranteed hours are not all used: ${hours(idle, format)} idle in all.`;
}

function workSentence(
  weeks: number,
  { spare }: Staff,
  { needed, paid, overtime }: HoursOfYear,
  format: Format,
): Phrase {
  const all = say`The work of ${plainly(String(weeks))} weeks takes ${hours(needed, format)}`;
  const staff = say`the present staff give up to ${shown(decimal(spare), 1, format)} a week`;
  if (paid < shownTenths) return say`${all}; ${staff}, which is enough in every week.`;
  const hire = say`a hire is paid ${hours(paid, format)}`;
  const late = overtime < shownTenths ? [] : say`, ${shown(decimal(overtime), 1, format)} of them as overtime`;
  return spare === 0 ? say`${all}; ${hire}${late}.` : say`${all}; ${staff}, ${hire}${late}.`;
}

/** How the year's hours are paid: first what of the guarantee is not used, then who does the hours. */
export function paidHoursSentence(weeks: readonly CalendarWeek[], staff: Staff, format: Format): Phrase {
  const year = hoursOfYear(weeks);
  return sentences(guaranteeSentence(weeks, staff, year.idle, format), workSentence(weeks.length, staff, year, format));
}
