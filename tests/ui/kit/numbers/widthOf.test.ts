import { expect, test } from 'vitest';
import { widthOf } from '../../../../src/ui/kit/numbers/widthOf';

test.each([
  ['4,634', 4.5],
  ['+0.00049', 7.5],
  ['−1,434', 5.5],
  ['1’234’567.5', 9.5],
  ['1 234 567,5', 9.5],
  ['1.200e−7', 7.5],
  ['', 0],
])('%s is as wide as so many digits', (text, digits) => {
  expect(widthOf(text)).toBe(digits);
});
