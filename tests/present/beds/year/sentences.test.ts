import { expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import type { Calendar } from '../../../../src/trade/calendar';
import { yearSentence } from '../../../../src/present/beds/year/sentences';
import { closing, run } from '../../../trade/running';
import { english, englishDates, names, read } from '../given';

function said(year: Calendar, boards: number): string {
  return read(yearSentence(year, boards, names, english, englishDates));
}

// Sown on days 0, 5 … 90; those of days 0 to 80 are harvested within 91 days: 17 × 50.
it('a year says when the first harvest is, what finishes and how full it gets', () => {
  expect(said(run('11 boards every 5 d: 10 d at 10', { days: 91 }), 11)).toBe(
    'Into an empty bed on 1 January 2031, 50 plants at a time: the first harvest is on 11 January 2031, ' +
      'and 850 plants finish within 13 weeks. The fullest day holds 10 of 11 boards. No day is over-full.',
  );
});

it('over-full days are counted, the first one named', () => {
  expect(said(run('5 boards every 3 d: 6 d at 10', { days: 12, batch: decimal(25) }), 5)).toContain(
    'The fullest day holds 6 of 5 boards. 9 days are over-full, the first on 4 January 2031.',
  );
});

it('a stage that needs more boards than are set for it is said', () => {
  const year = run('9 boards every 3 d: 3 d at 10, 2 boards; 6 d at 10', { days: 12, batch: decimal(25) });
  expect(said(year, 9)).toContain('On 12 days more nursery boards are needed than are set by hand.');
});

it('sowings left out in closed times are counted', () => {
  const year = run('11 boards every 5 d: 10 d at 10', { season: closing([6, 6]), days: 60 });
  expect(said(year, 11)).toContain('1 sowing in closed times is left out.');
});

it('a year too short for a harvest says so', () => {
  expect(said(run('11 boards every 5 d: 20 d at 10', { days: 14 }), 11)).toContain(
    'nothing is harvested within 2 weeks.',
  );
});
