import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { toDecimals, toSignificant } from '../../src/core/rounded';

describe('rounding for showing, half away from zero', () => {
  it.each<[value: string, decimals: number, text: string]>([
    ['2.345', 2, '2.35'],
    ['-2.345', 2, '-2.35'],
    ['2.5', 0, '3'],
    ['-2.5', 0, '-3'],
    ['1.005', 2, '1.01'],
    ['2.3449999999999999999999999999999999', 2, '2.34'],
    ['3', 2, '3.00'],
    ['-0.004', 2, '0.00'],
    ['-0.4', 0, '0'],
    ['1e20', 1, '100000000000000000000.0'],
  ])('%s to %d decimals is %s', (value, decimals, text) => expect(toDecimals(decimal(value), decimals)).toBe(text));

  it.each<[value: string, digits: number, text: string]>([
    ['0.0123456', 3, '0.0123'],
    ['0.01235', 3, '0.0124'],
    ['-0.01235', 3, '-0.0124'],
    ['123456', 2, '120000'],
    ['99.95', 3, '100'],
    ['0', 3, '0'],
    ['1e40', 3, '1e+40'],
  ])('%s to %d digits is %s', (value, digits, text) => expect(toSignificant(decimal(value), digits)).toBe(text));
});
