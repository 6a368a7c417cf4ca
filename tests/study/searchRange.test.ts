import { describe, expect, it } from 'vitest';
import { lever } from '../../src/model/view';
import { defaultRange } from '../../src/study/searchRange';
import { asked, idOf, modelOf } from '../model/table';

/** Where the input a of a written model is searched when nothing else is said. */
function range(line: string, plan?: string): string {
  const model = modelOf(line);
  const found = lever(asked(model, 'a', plan).view, idOf(model, 'a'));
  const { from, to } = defaultRange(found!);
  return `${from.toString()} to ${to.toString()}`;
}

describe('the default range', () => {
  it.each([
    ['reaches ten times as far as low and high', 'a: 20 | range: 19 22', '10 to 40'],
    ['to either side of a value at low', 'a: 20 | range: 20 22', '20 to 40'],
    ['to either side of a value at high', 'a: 20 | range: 19 20', '10 to 20'],
    ['without a range, from a hundredth to a hundredfold', 'a: 20', '0.2 to 2000'],
    ['of a negative input without a range too', 'a: -20', '-2000 to -0.2'],
    ['stops at 0 where low is not negative', 'a: 2 | range: 1 3', '0 to 12'],
    ['stops at 0 where low is 0', 'a: 2 | range: 0 3', '0 to 12'],
    ['does not stop at 0 where low is negative', 'a: 2 | range: -1 3', '-28 to 12'],
    ['below 0 it reaches both ways', 'a: -2 | range: -3 -1', '-12 to 8'],
    ['stops at 100 for a share in %', 'a [%]: 95 | range: 90 98', '45 to 100'],
    ['at both ends for a wide share', 'a [%]: 50 | range: 10 90', '0 to 100'],
    ['at 100 for a share without a range', 'a [%]: 95', '0.95 to 100'],
    ['at 100 for a share that may be negative', 'a [%]: 5 | range: -5 50', '-95 to 100'],
    ['not at 100 for a % that may be above it', 'a [%]: 90 | range: 50 150', '0 to 690'],
    ['not at 100 for a rate in % a year', 'a [%/year]: 50 | range: 40 60', '0 to 150'],
    ['not at 1 for a plain share', 'a: 0.5 | range: 0.4 0.6', '0 to 1.5'],
    ['is worked out to all digits', 'a: 0.1 | range: 0.07 0.2', '0 to 1.1'],
    [
      'keeps 34 digits',
      'a: 1.000000000000000000000000000000001',
      '0.01000000000000000000000000000000001 to 100.0000000000000000000000000000001',
    ],
  ])('%s', (_claim, line, expected) => {
    expect(range(line)).toBe(expected);
  });

  it.each([
    ["takes a plan's own number as certain", 'a: 20 | range: 19 22 | in A: 30', 'A', '0.3 to 3000'],
    ['and the shared one with its range', 'a: 20 | range: 19 22 | in A: 30\nb: 1 | in B: 1', 'B', '10 to 40'],
  ])('%s', (_claim, line, plan, expected) => {
    expect(range(line, plan)).toBe(expected);
  });

  it.each([
    ['at 0', 'a: 0'],
    ['whose range is one number', 'a: 5 | range: 5 5'],
    ['at 100 %, whose range is one number', 'a [%]: 100 | range: 100 100'],
    ['at 0 %', 'a [%]: 0'],
  ])('of an input %s is not empty', (_claim, line) => {
    const [from = NaN, to = NaN] = range(line).split(' to ').map(Number);
    expect(from).toBeLessThan(to);
  });

  it('of a share at 100 % without any room is within 100 all the same', () => {
    expect(range('a [%]: 100 | range: 100 100')).toMatch(/ to 100$/);
  });
});
