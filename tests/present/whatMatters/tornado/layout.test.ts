import { describe, expect, it } from 'vitest';
import { fit, type Beside, type Layout } from '../../../../src/present/whatMatters/tornado/layout';

const width = 600;
const place = ({ min, max, before, after }: Layout, value: number): number =>
  before + ((value - min) / (max - min)) * (width - before - after);

const rows: readonly Beside[] = [
  { left: -6000, leftText: 100, right: 20000, rightText: 110 },
  { left: 3000, leftText: 80, right: 4200, rightText: 80 },
  { left: 3840, leftText: 140, right: 3840, rightText: 60 },
];

describe('an axis and the texts beside its bars', () => {
  const layout = fit(rows, 3840, width);
  it('stand within the width', () => {
    for (const { left, leftText, right, rightText } of rows) {
      expect(place(layout, left) - leftText).toBeGreaterThanOrEqual(-0.5);
      expect(place(layout, right) + rightText).toBeLessThanOrEqual(width + 0.5);
    }
  });
  it('span all bars and today, with room to move', () => expect([layout.min, layout.max]).toEqual([-7040, 21040]));
  it('leave little more room than the texts need', () => {
    expect(place(layout, -6000)).toBeGreaterThan(100 + 12);
    expect(place(layout, -6000)).toBeLessThan(100 + 24);
  });
});

describe('texts go below their bars', () => {
  it('where no room is left beside them', () => {
    expect(fit(rows, 3840, 340)).toEqual({ width: 340, min: -7040, max: 21040, before: 4, after: 4, below: true });
  });
  it('and not where there is', () => expect(fit(rows, 3840, width).below).toBe(false));
});

describe('bars without length', () => {
  it('still have an axis, around today', () => {
    const flat = fit([{ left: 50, leftText: 20, right: 50, rightText: 20 }], 50, width);
    expect(flat.min).toBeLessThan(50);
    expect(flat.max).toBeGreaterThan(50);
  });
  it('at 0 too', () => {
    const flat = fit([{ left: 0, leftText: 20, right: 0, rightText: 20 }], 0, width);
    expect([flat.min, flat.max]).toEqual([-1.08, 1.08]);
  });
});

describe('an axis that was there before', () => {
  const before = fit(rows, 3840, width);
  const ends = (change: (end: number) => number): Beside[] =>
    rows.map((row) => ({ ...row, left: change(row.left), right: change(row.right) }));
  const moved = (by: number): Beside[] => ends((end) => end + by);
  it('holds still while the bars move a little', () => {
    expect(fit(moved(400), 4240, width, before)).toBe(before);
    expect(fit(moved(-400), 3440, width, before)).toBe(before);
  });
  it.each([
    ['the bars leave it', moved(2000), width],
    ['a text does not fit any more', rows.map((row) => ({ ...row, leftText: row.leftText + 20 })), width],
    ['the bars take little of it', ends((end) => end / 2), width],
    ['the texts leave much room', rows.map((row) => ({ ...row, leftText: 0, rightText: 0 })), width],
    ['the chart has another width', rows, width + 40],
    ['there is no room beside the bars any more', rows.map((row) => ({ ...row, leftText: 400 })), width],
  ])('is fitted anew where %s', (_claim, now, across) => {
    expect(fit(now, 3840, across, before)).toEqual(fit(now, 3840, across));
    expect(fit(now, 3840, across, before)).not.toBe(before);
  });
});
