import { expect, it } from 'vitest';
import { apart } from '../../../src/present/picture/apart';

it.each([
  ['English stays as it is', 'Price (a day)? 3.5', 'Price (a day)? 3.5'],
  ['Hebrew is isolated', 'מחיר (ליום)? 3.5', '\u2068מחיר (ליום)? 3.5\u2069'],
  ['Arabic after a number is, too', '3 مال!', '\u20683 مال!\u2069'],
])('%s', (_claim, text, expected) => {
  expect(apart(text)).toBe(expected);
});
