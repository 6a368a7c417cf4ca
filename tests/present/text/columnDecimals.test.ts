import { expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import { columnDecimals } from '../../../src/present/text/columnDecimals';

// Four significant digits of the largest, without a unit.
test.each<[claim: string, values: string[], decimals: number]>([
  ['the largest decides', ['0.001234', '12.345'], 2],
  ['whatever its sign', ['0.001234', '-123.45'], 1],
  ['what cannot be computed does not count', ['NaN', '1.2345'], 3],
  ['nor does 0 beside another', ['0', '0.1234567'], 4],
  ['zeros alone need none', ['0', '0'], 0],
  ['nothing needs none', ['NaN'], 0],
])('%s', (_claim, values, decimals) => expect(columnDecimals(values.map(decimal), undefined)).toBe(decimals));
