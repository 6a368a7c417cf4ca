import { describe, expect, it } from 'vitest';
import { fit, type Beside, type Layout } from '../../../src/ui/whatMatters/layout';

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
  it('span all bars and today', () => expect([layout.min, layout.max]).toEqual([-6000, 20000]));
  it('leave no more room than the texts need', () => expect(place(layout, -6000)).toBeLessThan(100 + 10));
});

describe('texts go below their bars', () => {
  it('where no room is left beside them', () => {
    expect(fit(rows, 3840, 340)).toEqual({ min: -6000, max: 20000, before: 4, after: 4, below: true });
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
    expect([flat.min, flat.max]).toEqual([-1, 1]);
  });
});
