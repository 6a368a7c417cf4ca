import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import type { Calendar } from '../../src/trade/calendar';
import { readIsoDate } from '../../src/trade/civilDate';
import { evenSeason, type Season } from '../../src/trade/season';
import { closing, run, shown } from './running';

const days = (found: Calendar): string[] => found.batches.map(({ sown }) => String(sown));

describe('batches', () => {
  it('are sown every interval and move on when their time is over', () => {
    const found = run('9 boards every 4 d: 10 d at 60; 14 d at 21', { days: 40 });
    expect(days(found)).toEqual(['0', '4', '8', '12', '16', '20', '24', '28', '32', '36']);
    expect(shown(found.batches[1])).toEqual(['1: 4 to 14', '2: 14 to 28']);
    expect(found.batches.map(({ harvested }) => harvested)).toEqual([
      24,
      28,
      32,
      36,
      ...Array.from({ length: 6 }, () => undefined),
    ]);
  });

  it('keep fractions of a day: instants decide', () => {
    const found = run('99 boards every 3.5 d: 10.5 d at 60; 14 d at 21', { days: 30 });
    expect(days(found)).toEqual(['0', '3.5', '7', '10.5', '14', '17.5', '21', '24.5', '28']);
    expect(shown(found.batches[1])).toEqual(['1: 3.5 to 14', '2: 14 to 28']);
  });

  it('thirds of a day meet: a board freed at an instant is used at that instant', () => {
    const third = '0.3333333333333333333333333333333333';
    const found = run(`7 boards every ${third} d: 2.333333333333333333333333333333333 d at 8`, { days: 60 });
    expect(found.batch).toBe(8);
    expect(found.overFull).toEqual([]);
    expect(Math.max(...found.pictures.map(({ inUse }) => inUse))).toBe(7);
  });

  it('lose plants counted from the batch, rounded up', () => {
    const found = run('9 boards every 9 d: 2 d at 5, keeps 0.9; 2 d at 5, keeps 0.9; 2 d at 5, keeps 0.5', {
      days: 9,
      batch: decimal(11),
    });
    const [batch] = found.batches;
    expect(batch?.stays.map(({ plants, boards }) => [plants, boards])).toEqual([
      [11, 3],
      [10, 2],
      [9, 2],
    ]);
    expect(batch?.finished).toBeCloseTo(4.455, 12);
    expect(batch?.kept).toBe(5);
  });

  it('skip a stage of time 0, its survival with it', () => {
    const found = run('9 boards every 9 d: 0 d at 0, keeps 0.1; 2 d at 5', { days: 9, batch: decimal(7) });
    expect(shown(found.batches[0])).toEqual(['2: 0 to 2']);
    expect(found.batches[0]?.kept).toBe(7);
  });

  it('hold their boards through the turnaround while they stand in the next stage', () => {
    const found = run('9 boards every 30 d: 2 d at 5; 3 d at 5', { days: 9, batch: decimal(10), turnaround: 1.5 });
    expect(found.batches[0]?.stays.map(({ from, to, freed }) => [from, to, freed])).toEqual([
      [0, 2, 3.5],
      [2, 5, 6.5],
    ]);
    expect(found.pictures.map(({ inUse }) => inUse)).toEqual([2, 2, 4, 4, 2, 2, 2, 0, 0]);
    expect(found.pictures.map(({ plants }) => plants.join('+'))).toEqual([
      '10+0',
      '10+0',
      '0+10',
      '0+10',
      '0+10',
      '0+0',
      '0+0',
      '0+0',
      '0+0',
    ]);
  });
});

describe('the season', () => {
  const january = 21;
  const monthly = (stage: number, month: number, time: number): Season => {
    const times = Array.from({ length: 12 }, (_, i) => (i === month - 1 ? decimal(time) : undefined));
    return { ...evenSeason, monthTimes: [...Array.from({ length: stage }, () => []), times] };
  };

  it('a stage takes the time of the month in which the batch enters it', () => {
    const found = run('9 boards every 20 d: 10 d at 60; 14 d at 21', { days: 90, season: monthly(1, 1, january) });
    // Sown on days 0 and 20, the batches enter stage 2 on 11 January and 31 January; the next on 20 February.
    expect(found.batches.slice(0, 3).flatMap(shown)).toEqual([
      '1: 0 to 10',
      '2: 10 to 31',
      '1: 20 to 30',
      '2: 30 to 51',
      '1: 40 to 50',
      '2: 50 to 64',
    ]);
  });

  it('a month may skip a stage that others run, its survival with it', () => {
    const found = run('9 boards every 30 d: 10 d at 60, keeps 0.5; 14 d at 21', {
      days: 60,
      batch: decimal(20),
      season: monthly(0, 1, 0),
    });
    expect(found.batches.flatMap(shown)).toEqual(['2: 0 to 14', '2: 30 to 44']);
    expect(
      run('9 boards every 30 d: 10 d at 60, keeps 0.5; 14 d at 21', { batch: decimal(20), season: monthly(0, 2, 0) })
        .batches.slice(0, 3)
        .map(({ kept }) => kept),
    ).toEqual([10, 10, 10]);
  });

  it('a month may run a stage that the others skip', () => {
    const found = run('9 boards every 40 d: 0 d at 60; 14 d at 21', {
      days: 60,
      batch: decimal(20),
      season: monthly(0, 1, 5),
    });
    expect(found.batches.flatMap(shown)).toEqual(['1: 0 to 5', '2: 5 to 19', '2: 40 to 54']);
  });

  it('a stage that only some months run needs holes in its boards, and may be the only one', () => {
    const season = monthly(0, 1, 5);
    const faulty = run('9 boards every 40 d: 0 d at 0; 14 d at 21', { season });
    expect([faulty.faults.map(({ code }) => code), faulty.batches]).toEqual([['schedule-density'], []]);
    const only = run('9 boards every 40 d: 0 d at 60', { season, days: 60 });
    expect([only.faults, only.batch, only.batches.flatMap(shown)]).toEqual([[], 540, ['1: 0 to 5']]);
  });

  it('sowing starts on the day of the year that is given, in the next year if it is over', () => {
    const from = (firstSowing: number, start: string) =>
      run('9 boards every 300 d: 10 d at 60', {
        season: { ...evenSeason, firstSowing },
        start: readIsoDate(start) ?? NaN,
      });
    expect(days(from(32, '2031-01-01'))).toEqual(['31', '331']);
    expect(days(from(32, '2031-03-01'))).toEqual(['337']);
    expect(days(from(60, '2032-02-01'))).toEqual(['29', '329']);
  });

  it('a closed time leaves out its sowings, the later ones keep to their days', () => {
    const found = run('9 boards every 3 d: 1 d at 60', { days: 20, season: closing([6, 10]) });
    expect(days(found)).toEqual(['0', '3', '12', '15', '18']);
    expect(found.skipped).toEqual([6, 9]);
  });

  it('a move in a closed time waits for its end, and the next stage lasts its full time from then', () => {
    const found = run('9 boards every 30 d: 5 d at 60; 7 d at 20', { days: 30, season: closing([6, 10]) });
    expect(shown(found.batches[0])).toEqual(['1: 0 to 10', '2: 10 to 17']);
    expect(found.batches[0]?.stays.map(({ waited }) => waited)).toEqual([5, 0]);
  });

  it('a harvest in a closed time waits, a turnaround does not', () => {
    const found = run('9 boards every 30 d: 5.5 d at 60', { days: 30, season: closing([6, 10]), turnaround: 0.5 });
    expect(found.batches[0]?.stays.map(({ to, freed, waited }) => [to, freed, waited])).toEqual([[10, 10.5, 4.5]]);
    const before = run('9 boards every 30 d: 4.5 d at 60', { days: 30, season: closing([6, 10]), turnaround: 2 });
    expect(before.batches[0]?.stays.map(({ to, freed }) => [to, freed])).toEqual([[4.5, 6.5]]);
  });

  it('a closed time runs over the new year', () => {
    const found = run('9 boards every 5 d: 3 d at 60', {
      days: 30,
      start: readIsoDate('2031-12-20') ?? NaN,
      season: closing([363, 3]),
    });
    // Closed from 29 December (day 9) to 3 January (day 14).
    expect(days(found)).toEqual(['0', '5', '15', '20', '25']);
    expect(shown(found.batches[1])).toEqual(['1: 5 to 8']);
    expect(
      run('9 boards every 7 d: 3 d at 60', {
        days: 30,
        start: readIsoDate('2031-12-20') ?? NaN,
        season: closing([363, 3]),
      }).batches.map(shown),
    ).toEqual([['1: 0 to 3'], ['1: 7 to 15'], ['1: 21 to 24'], ['1: 28 to 31']]);
  });

  it('batches that wait go on together and crowd the bed', () => {
    const text = '8 boards every 2 d: 8 d at 40; 2 d at 10';
    expect(run(text, { days: 40 }).overFull).toEqual([]);
    const found = run(text, { days: 40, season: closing([11, 15]) });
    // Closed on days 10 to 14: the batches sown on days 4 and 6 are due to move on days 12 and 14,
    // and the one before them waits for its harvest.
    expect(found.batches.slice(1, 5).map(shown)).toEqual([
      ['1: 2 to 15', '2: 15 to 17'],
      ['1: 4 to 15', '2: 15 to 17'],
      ['1: 6 to 15', '2: 15 to 17'],
      ['1: 8 to 16', '2: 16 to 18'],
    ]);
    expect(found.overFull).toEqual([15, 16]);
    expect(found.pictures.slice(14, 19).map(({ boards }) => boards.join('+'))).toEqual([
      '4+4',
      '1+12',
      '1+16',
      '1+4',
      '2+0',
    ]);
  });
});
