import { describe, expect, it } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import { drawLimits, seedLimits, typedWhole } from '../../../src/present/text/wholeNumber';

const english = createFormat('en-GB');

describe('a whole number', () => {
  it('is read with its marks of thousands, and 0 is a seed', () => {
    expect(typedWhole('1,000,000', drawLimits, english)).toEqual({ number: 1_000_000 });
    expect(typedWhole('0', seedLimits, english)).toEqual({ number: 0 });
  });
  it('is refused beyond its limits, with what would do', () => {
    for (const text of ['0', '10000001', '2.5', '-3']) {
      expect(typedWhole(text, drawLimits, english)).toEqual({
        fault: `no whole number from 1 to 10,000,000: ${text}. Enter one.`,
      });
    }
    expect(typedWhole('many', drawLimits, english)).toEqual({
      fault: 'not a number: many. Write digits, as in 1,234.5.',
    });
  });
});
