import { dayNumber, weekday } from '../../trade/civilDate';

const msPerDay = 86_400_000;

/** Writes days, given by their number, as a locale does. */
export interface Dates {
  /** `Mon 9 Mar`. */
  short(day: number): string;
  /** `9 March 2031`. */
  long(day: number): string;
  /** `Mar`. */
  month(day: number): string;
}

export function createDates(locale: string): Dates {
  const writer = (options: Intl.DateTimeFormatOptions): ((day: number) => string) => {
    const format = new Intl.DateTimeFormat(locale, { timeZone: 'UTC', calendar: 'gregory', ...options });
    return (day) => format.format(new Date(day * msPerDay));
  };
  return {
    short: writer({ weekday: 'short', day: 'numeric', month: 'short' }),
    long: writer({ day: 'numeric', month: 'long', year: 'numeric' }),
    month: writer({ month: 'short' }),
  };
}

/** Writes moments as a locale does, by the time zone of the browser: `9 Mar 2031, 16:30`. */
export function momentWriter(locale: string): (at: number) => string {
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
  return (at) => format.format(at);
}

/** The number of the day of a date, in the time zone of the machine. */
export function dayOf(now: Date): number {
  return dayNumber({ year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() });
}

/** The Monday of the week of a date, in the time zone of the browser. */
export function mondayOf(now: Date): number {
  const day = dayOf(now);
  return day - weekday(day) + 1;
}

/** A time in UTC as a calendar file writes it: `20310309T060000Z`. */
export function stampOf(now: Date): string {
  return `${now.toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
}
