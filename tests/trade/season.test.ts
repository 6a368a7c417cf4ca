import { describe, expect, it } from 'vitest';
import { evaluatePlan } from '../../src/model/values';
import { closedDays, closedLength, readSeason } from '../../src/trade/season';
import { modelOf, planOf } from '../model/table';

function read(text: string) {
  const model = modelOf(text);
  return readSeason(model.cells, evaluatePlan(planOf(model)));
}

describe('the season is read from the crop column', () => {
  it('by month, first sowing and closed times', () => {
    const season = read(`
      young [day]: 10 | crop: stage 1 time
      grown [day]: 14 | crop: stage 2 time
      grown_in_january [week]: 3 | crop: stage 2 time in 01
      grown_in_june [day]: 12.5 | crop: stage 2 time in 06
      first: 32 | crop: first sowing
      summer_from: 200 | crop: closed 2 from
      summer_to: 210 | crop: closed 2 to
      winter_from: 355 | crop: closed 1 from
      winter_to: 6 | crop: closed 1 to
    `);
    expect(season.firstSowing).toBe(32);
    expect(season.closed).toEqual([
      { number: 1, from: 355, to: 6 },
      { number: 2, from: 200, to: 210 },
    ]);
    expect(season.monthTimes.map((times) => times.map((time) => time?.toNumber()).slice(0, 6))).toEqual([
      [undefined, undefined, undefined, undefined, undefined, undefined],
      [21, undefined, undefined, undefined, undefined, 12.5],
    ]);
  });

  it('is even where nothing is said', () => {
    expect(read('a: 1')).toEqual({ firstSowing: undefined, closed: [], monthTimes: [] });
  });

  it('leaves out a closed time with one end, and keeps an error as a number that is none', () => {
    const season = read(`
      zero: 0
      half: 5 | crop: closed 1 from
      wrong: 1 / zero | crop: first sowing
    `);
    expect(season.closed).toEqual([]);
    expect(season.firstSowing).toBeNaN();
  });
});

describe('closed times', () => {
  const daysOf = (...closed: [from: number, to: number][]) =>
    closedDays(closed.map(([from, to], i) => ({ number: i + 1, from, to }))).flatMap((is, day) => (is ? [day] : []));

  it.each<[claim: string, closed: [number, number][], days: number[]]>([
    ['both ends are closed', [[3, 5]], [3, 4, 5]],
    ['one day', [[7, 7]], [7]],
    ['over the new year', [[364, 2]], [1, 2, 364, 365]],
    [
      'two of them',
      [
        [2, 3],
        [3, 4],
      ],
      [2, 3, 4],
    ],
    [
      'a faulty one is left out',
      [
        [0, 3],
        [5, 366],
        [2.5, 4],
        [NaN, 3],
      ],
      [],
    ],
  ])('%s', (_claim, closed, days) => {
    expect(daysOf(...closed)).toEqual(days);
  });

  it('the whole year', () => expect(daysOf([1, 365])).toHaveLength(365));

  it.each([
    [3, 5, 3],
    [355, 6, 17],
    [1, 365, 365],
  ])('from %d to %d lasts %d days', (from, to, days) => {
    expect(closedLength({ number: 1, from, to })).toBe(days);
  });
});
