import { describe, expect, it } from 'vitest';
import { modelOf, told } from './table';

function faults(text: string): string[] {
  return told(modelOf(text).faults);
}

describe('a value in its range', () => {
  it.each([
    ['between low and high', 'a: 2 | range: 1 3'],
    ['at low', 'a: 1 | range: 1 3'],
    ['at high', 'a: 3.0 | range: 1 3'],
    ['the only one', 'a: 2 | range: 2 2'],
    [
      'at low, to the 34th digit',
      'a: 1.000000000000000000000000000000001 | range: 1.000000000000000000000000000000001 3',
    ],
    ['of a shape that ignores it', 'a: 1 | range: 1 3 uniform'],
    ["a plan's own number may lie outside", 'a: 2 | range: 1 3 | in A: 9 | in B: -9'],
    ["a plan's own formula may take its place", 'a: 2 | range: 1 3 | in A: b * 9\nb: 1'],
  ])('%s', (_claim, text) => {
    expect(faults(text)).toEqual([]);
  });
});

describe('a fault', () => {
  it.each([
    ['below low', 'a: 0.9 | range: 1 3', ['range-value | 2 | formula | a | 0.9']],
    ['above high', 'a: 3.1 | range: 1 3', ['range-value | 2 | formula | a | 3.1']],
    [
      'above high in the 34th digit',
      `a: 1.${'0'.repeat(32)}2 | range: 0 1.${'0'.repeat(32)}1`,
      [`range-value | 2 | formula | a | 1.${'0'.repeat(32)}2`],
    ],
    ['on a calculated cell', 'a: 2 * b | range: 1 3\nb: 1', ['range-calculated | 2 | low | a | 1']],
    [
      'on a cell calculated in the shared formula only',
      'a: 2 * b | range: 1 3 | in A: 2\nb: 1',
      ['range-calculated | 2 | low | a | 1'],
    ],
    [
      'of the shared value, though every plan has its own',
      'a: 9 | range: 1 3 | in A: 2 | in B: 3',
      ['range-value | 2 | formula | a | 9'],
    ],
  ])('%s', (_claim, text, told) => {
    expect(faults(text)).toEqual(told);
  });

  it('says what would fix it', () => {
    const [outside, calculated] = modelOf('a: 9 | range: 1 3\nb: a | range: 1 3').faults;
    expect(outside?.message).toBe('value outside its range: 9. Widen 1 to 3, or change the value.');
    expect(calculated?.message).toBe('range on a calculated entry: b. Give ranges to the inputs that it is made from.');
  });

  it.each([
    ['a number too long', `a: ${'1'.repeat(40)} | range: 1 3`, ['number-digits']],
    ['a decimal comma', 'a: 1,5 | range: 1 3', ['decimal-comma']],
    ['a number misspelt', 'a: 1.5.2 | range: 1 3', ['formula-grammar']],
  ])('in the value itself is told once: %s', (_claim, text, codes) => {
    expect(modelOf(text).faults.map(({ code }) => code)).toEqual(codes);
  });
});
