import { describe, expect, it } from 'vitest';
import { ticksOf } from '../../../src/present/picture/ticks';

describe('the numbers on an axis', () => {
  it.each([
    ['are multiples of a round step', 0, 10, 7, [0, 2, 4, 6, 8, 10]],
    ['need not reach the ends', -12.2, 13.2, 7, [-10, -5, 0, 5, 10]],
    ['are as close as so many allow', 0, 1, 6, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    ['may be few', 0, 100, 2, [0, 100]],
    ['may be one where a step longer than the axis is the first to fit', 1, 99, 2, [50]],
    ['count an end that rounding moved a little', 0.1, 0.7, 7, [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]],
    ['of small size', 2e-7, 9e-7, 4, [2e-7, 4e-7, 6e-7, 8e-7]],
  ])('%s', (_claim, min, max, most, values) => {
    const found = ticksOf(min, max, most).values;
    expect(found).toHaveLength(values.length);
    found.forEach((value, i) => expect(value).toBeCloseTo(values[i]!, 12));
  });

  it('are never more than asked for, and at least two wherever five may stand', () => {
    for (let i = 1; i < 2000; i += 1) {
      const [min, span, most] = [Math.sin(i) * 10 ** ((i % 9) - 4), (1 + (i % 97)) * 10 ** ((i % 7) - 3), 2 + (i % 6)];
      const { values } = ticksOf(min, min + span, most);
      expect(values.length).toBeLessThanOrEqual(most);
      if (most >= 5) expect(values.length).toBeGreaterThanOrEqual(2);
      for (const value of values) expect(value >= min - 1e-9 * span && value <= min + span * (1 + 1e-9)).toBe(true);
    }
  });
});
