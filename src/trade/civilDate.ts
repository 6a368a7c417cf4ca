import { daysPerWeek } from './week';

/** A day of the Gregorian calendar. */
export interface CivilDate {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

const daysPerEra = 146_097;
const yearsPerEra = 400;
/** Days from 1 March of the year 0 to 1 January 1970. */
const epoch = 719_468;

/** Days before each month of a year without 29 February. */
const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Days in a year as crop schedules count them: 29 February has no number of its own. */
export const daysPerYear = 365;

/**
 * The number of a day: whole days since 1 January 1970, in the Gregorian calendar carried on without end both ways.
 * Source: H. Hinnant, chrono-Compatible Low-Level Date Algorithms (2021), days_from_civil: years start in March, so
 * that the day that leap years add comes last; 400 years (an era) repeat.
 */
export function dayNumber({ year, month, day }: CivilDate): number {
  const fromMarch = month <= 2 ? year - 1 : year;
  const era = Math.floor(fromMarch / yearsPerEra);
  const yearOfEra = fromMarch - era * yearsPerEra;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * daysPerEra + dayOfEra - epoch;
}

/** The date of a day's number. Source: the same, civil_from_days. */
export function civilDate(number: number): CivilDate {
  const shifted = number + epoch;
  const era = Math.floor(shifted / daysPerEra);
  const dayOfEra = shifted - era * daysPerEra;
  const leapDays = Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const day = dayOfYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  return { year: yearOfEra + era * yearsPerEra + (month <= 2 ? 1 : 0), month, day };
}

/** The day of the year as crop schedules count it, 1 to 365; 29 February counts as 28 February, day 59. */
export function dayOfYear({ month, day }: CivilDate): number {
  return (daysBefore[month - 1] ?? 0) + (month === 2 && day === 29 ? 28 : day);
}

/** A day's date as ISO 8601 writes it, for years 0 to 9999: `2031-03-09`. */
export function isoDate(number: number): string {
  const { year, month, day } = civilDate(number);
  return [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-');
}

/** The number of a day written as `2031-03-09`; undefined for a text that is no day of the calendar. */
export function readIsoDate(text: string): number | undefined {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  const number = dayNumber({ year: Number(year), month: Number(month), day: Number(day) });
  return Number.isFinite(number) && isoDate(number) === text ? number : undefined;
}

/** The day of the week, 1 Monday to 7 Sunday (ISO 8601). 1 January 1970 was a Thursday. */
export function weekday(number: number): number {
  const fromMonday = (number + 3) % daysPerWeek;
  return ((fromMonday + daysPerWeek) % daysPerWeek) + 1;
}
