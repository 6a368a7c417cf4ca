import { describe, expect, it } from 'vitest';
import { bandPath, yearBands, runsOf, type Room } from '../../../../src/present/beds/year/bands';
import { run } from '../../../trade/running';
import { decimal } from '../../../../src/core/number';

/** A plot of 100 by 100 pixels, 10 from the left and the top. */
const room: Room = { width: 120, height: 120, left: 10, right: 10, top: 10, bottom: 10 };

describe('runs of days', () => {
  it('follow one another', () => {
    expect(runsOf([3, 4, 5, 9, 11, 12])).toEqual([
      [3, 6],
      [9, 10],
      [11, 13],
    ]);
    expect(runsOf([])).toEqual([]);
  });
});

describe('a year as bands', () => {
  // 10 boards, 10 days: sown every 5 d on 5 boards, for 2 d.
  it('steps at the day on which boards come into use, against the boards there are', () => {
    const year = run('10 boards every 5 d: 2 d at 10', { days: 10, batch: decimal(50) });
    const { bands, limit, most, over } = yearBands(year, 10, room);
    expect([limit, most, over]).toEqual([10, 10, []]);
    expect(bands.map(({ outline }) => bandPath(outline))).toEqual([
      'M10,60 L30,60 L30,110 L60,110 L60,60 L80,60 L80,110 L110,110 L110,110 L10,110 Z',
    ]);
  });

  it('stack, and the last day’s number stands in the middle of its band', () => {
    const year = run('10 boards every 5 d: 5 d at 10; 5 d at 10', { days: 10, batch: decimal(50) });
    const { bands } = yearBands(year, 10, room);
    expect(bands.map(({ label }) => label)).toEqual([85, 35]);
    expect(bandPath(bands[1]!.outline)).toBe('M10,60 L60,60 L60,10 L110,10 L110,60 L10,60 Z');
  });

  it('mark over-full days and make room above the boards there are', () => {
    const year = run('5 boards every 3 d: 6 d at 10', { days: 12, batch: decimal(25) });
    const { most, limit, over } = yearBands(year, 5, room);
    expect([most, limit]).toEqual([6, 26.7]);
    expect(over).toEqual([[35, 110]]);
  });

  it('mark the first day of each month', () => {
    const year = run('10 boards every 5 d: 2 d at 10', { days: 100 });
    expect(yearBands(year, 10, room).months.map(({ x }) => x)).toEqual([10, 41, 69, 100]);
  });
});
