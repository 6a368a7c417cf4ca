import { localDay } from './watch';

/**
 * Writes moments, in milliseconds since 1970, by the clock of the place as a locale does: `14:03:09`, with the day
 * where that is another than now.
 */
export function createClockText(locale: string): (at: number, now: number) => string {
  const clock = new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit', second: '2-digit' });
  const clockAndDay = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'medium' });
  const isToday = (at: number, now: number): boolean => localDay(new Date(at)) === localDay(new Date(now));
  return (at, now) => (isToday(at, now) ? clock : clockAndDay).format(at);
}
