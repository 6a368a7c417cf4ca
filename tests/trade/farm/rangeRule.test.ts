import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import type { RangeRule } from '../../../src/trade/farm/askedFigures';
import { rangeOf } from '../../../src/trade/farm/rangeRule';

describe('ranges around figures that are given', () => {
  it.each<[rule: RangeRule, given: number, unit: string, range: string]>([
    ['measured', 20, 'USD/h', '16 to 24'],
    ['time', 6, 'week', '5.4 to 6.6'],
    ['loss', 4, '%', '94 to 98'],
    ['loss', 80, '%', '0 to 60'],
    ['loss', 0, '%', 'none'],
    ['measured', 0, 'plant/week', 'none'],
    ['decision', 288, 'board', 'none'],
  ])('%s %d %s: %s', (rule, given, unit, range) => {
    const found = rangeOf(rule, decimal(given), unit);
    expect(found === undefined ? 'none' : `${found.low} to ${found.high}`).toBe(range);
  });
});
