import { expect, it } from 'vitest';
import { isoDate, readIsoDate } from '../../../src/trade/civilDate';
import { mondayOf, stampOf } from '../../../src/present/text/dates';
import { englishDates } from '../beds/given';

it.each([
  ['a Monday is its own', '2031-03-10T00:30:00', '2031-03-10'],
  ['a Sunday belongs to the Monday before', '2031-03-16T23:30:00', '2031-03-10'],
  ['over the new year', '2031-01-01T12:00:00', '2030-12-30'],
])('the Monday of a week: %s', (_claim, now, monday) => {
  expect(isoDate(mondayOf(new Date(now)))).toBe(monday);
});

it('a stamp is a moment in UTC, to the second', () => {
  expect(stampOf(new Date(Date.UTC(2031, 2, 9, 6, 5, 4, 321)))).toBe('20310309T060504Z');
});

it('days are written as a locale does, whatever the time zone', () => {
  const day = readIsoDate('2031-03-09') ?? NaN;
  // Releases of the locale data differ in the comma.
  expect(englishDates.short(day)).toMatch(/^Sun,? 9 Mar$/);
  expect([englishDates.long(day), englishDates.month(day)]).toEqual(['9 March 2031', 'Mar']);
});
