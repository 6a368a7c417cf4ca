import { Decimal as Library } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { decimal, exponentFits, floatOf, isNumberText, numberToText, significantDigits } from '../../src/core/number';

describe('a number’s text', () => {
  it.each(['0', '7', '-7', '1.5', '.5', '1.', '-0.25', '1e3', '1E3', '1e+3', '1e-3', '007', '-.5e-2'])(
    '%j is one',
    (text) => expect(isNumberText(text)).toBe(true),
  );

  it.each([
    '',
    ' 1',
    '1 ',
    '+1',
    '--1',
    '1,5',
    '1 000',
    '1e',
    '1e1.5',
    '.',
    '-',
    '0x10',
    'Infinity',
    'NaN',
    '1_0',
    '٣',
  ])('%j is none', (text) => expect(isNumberText(text)).toBe(false));

  it.each<[text: string, digits: number]>([
    ['0', 0],
    ['0.00', 0],
    ['7', 1],
    ['-007', 1],
    ['0.0012', 2],
    ['1.20', 3],
    ['1200', 4],
    ['12.5e10', 3],
    ['-123456789012345678901234567890.1234', 34],
  ])('%s has %d significant digits', (text, digits) => expect(significantDigits(text)).toBe(digits));

  it.each<[text: string, fits: boolean]>([
    ['1e300', true],
    ['9.99e300', true],
    ['1e301', false],
    ['10e300', false],
    ['1e-300', true],
    ['9e-301', false],
    ['0.1e-300', false],
    ['0', true],
    ['0e301', false],
    ['-1e300', true],
    [`1${'0'.repeat(300)}`, true],
    [`1${'0'.repeat(301)}`, false],
    ['1e99999999999', false],
  ])('%s within ±300 powers of ten: %j', (text, fits) => expect(exponentFits(text)).toBe(fits));
});

describe('exact numbers', () => {
  it('keep 34 digits as typed', () => {
    const text = '1.234567890123456789012345678901234';
    expect(decimal(text).toString()).toBe(text);
  });

  it.each<[claim: string, sum: string, result: string]>([
    ['down to even', '0.5', '1000000000000000000000000000000000'],
    ['up to even', '1.5', '1000000000000000000000000000000002'],
    ['up above a half', '0.50001', '1000000000000000000000000000000001'],
  ])('round half to even: %s', (_claim, sum, result) => {
    expect(decimal('1e33').plus(sum).toString()).toBe(result);
  });

  it('leave the library’s own settings alone', () => {
    expect([Library.precision, Library.rounding]).toEqual([20, Library.ROUND_HALF_UP]);
  });

  it.each<[text: string, written: string]>([
    ['-0', '0'],
    ['0.0000001', '1e-7'],
    ['0.000001', '0.000001'],
    ['1e33', `1${'0'.repeat(33)}`],
    ['1e34', '1e+34'],
    ['-5.20', '-5.2'],
  ])('%s is written %s', (text, written) => {
    expect(numberToText(decimal(text))).toBe(written);
    expect(Number(JSON.parse(numberToText(decimal(text))))).toBe(Number(text) + 0);
  });
});

describe('the float64 of a number', () => {
  it.each(['0.1', '-5.25', '1e300', '0.1000000000000000000000000000000001'])(
    '%s is the nearest, each time it is asked for',
    (text) => {
      const number = decimal(text);
      expect([floatOf(number), floatOf(number)]).toEqual([Number(text), Number(text)]);
    },
  );
  it.each(['NaN', '1e400', '-1e309'])('is NaN for %s', (text) => expect(floatOf(decimal(text))).toBeNaN());
});
