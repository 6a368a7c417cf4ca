import { localDay } from './watch';

/**
 * Writes a time, given in milliseconds since 1970, in the local time zone and locale: `14:03:09`, with the day where
 * that is not today.
 */
export function createClockText(locale: string): (at: number, now: number) => string {
  const clock = new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit', second: '2-digit' });
  const clockAndDay = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'medium' });
  const isToday = (at: number, now: number): boolean => localDay(new Date(at)) === localDay(new Date(now));
  return (at, now) => (isToday(at, now) ? clock : clockAndDay).format(at);
}
