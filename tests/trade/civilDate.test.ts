import { describe, expect, it } from 'vitest';
import { civilDate, dayNumber, dayOfYear, isoDate, readIsoDate, weekday } from '../../src/trade/civilDate';

/** The engine's own calendar, which the code under test does without. */
function engineDate(number: number): string {
  return new Date(number * 86_400_000).toISOString().slice(0, 10);
}

describe('days and dates', () => {
  it('agree with the engine’s calendar on every day from 1600 to 2400', () => {
    const [first, last] = [dayNumber({ year: 1600, month: 1, day: 1 }), dayNumber({ year: 2400, month: 12, day: 31 })];
    const wrong: number[] = [];
    for (let day = first; day <= last; day += 1) {
      const isRight = isoDate(day) === engineDate(day) && dayNumber(civilDate(day)) === day;
      if (!isRight || weekday(day) !== (new Date(day * 86_400_000).getUTCDay() || 7)) wrong.push(day);
    }
    expect(wrong).toEqual([]);
    expect(last - first).toBe(292_559);
  }, 60_000);

  // H. Hinnant, chrono-Compatible Low-Level Date Algorithms: 1970-01-01 is day 0.
  it.each([
    ['1970-01-01', 0],
    ['1969-12-31', -1],
    ['2000-03-01', 11_017],
    ['0000-03-01', -719_468],
  ])('%s is day %d', (text, number) => {
    expect(readIsoDate(text)).toBe(number);
    expect(isoDate(number)).toBe(text);
  });

  it.each([
    '2031-02-29',
    '2031-13-01',
    '2031-00-10',
    '2031-04-31',
    '2031-4-1',
    '31-04-01',
    'soon',
    '',
    '2031-04-01T00',
  ])('no day: %s', (text) => {
    expect(readIsoDate(text)).toBeUndefined();
  });

  it.each([
    ['2031-01-01', 1],
    ['2031-02-28', 59],
    ['2031-03-01', 60],
    ['2031-12-31', 365],
    ['2032-02-28', 59],
    ['2032-02-29', 59],
    ['2032-03-01', 60],
    ['2032-12-31', 365],
  ])('%s is number %d of a year of 365 days', (text, number) => {
    expect(dayOfYear(civilDate(readIsoDate(text) ?? NaN))).toBe(number);
  });

  // econ-S11: poinsettias stand pot to pot from 1 to 14 September, 13 days (Texas Poinsettia Producers Guide).
  it('counts the days between two dates', () => {
    expect((readIsoDate('2031-09-14') ?? NaN) - (readIsoDate('2031-09-01') ?? NaN)).toBe(13);
  });
});
