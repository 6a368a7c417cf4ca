import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { decimal } from '../../src/core/number';
import { lever } from '../../src/model/view';
import { defaultRange, isGuess, possibleRange } from '../../src/study/searchRange';
import { asked, idOf, modelOf } from '../model/table';
import { leverOf } from './leverOf';

/** Where the input a of a written model is searched when nothing else is said. */
function range(line: string, plan?: string): string {
  const model = modelOf(line);
  const found = lever(asked(model, 'a', plan).view, idOf(model, 'a'));
  const { from, to } = defaultRange(found!);
  return `${from.toString()} to ${to.toString()}`;
}

describe('the default range', () => {
  // By hand, from the contract: reach = max(high, base) − min(low, base), from base − 10 reach to base + 10 reach.
  it.each([
    ['reaches ten times as far as low and high are apart', 'a: 50 | range: 49 52', '20 to 80'],
    ['to either side of a value at low', 'a: 50 | range: 50 52', '30 to 70'],
    ['to either side of a value at high', 'a: 50 | range: 49 50', '40 to 60'],
    ['further from a value above its range', 'a: 60 | range: 49 52', '0 to 170'],
    ['further from a value below its range', 'a: 40 | range: 49 52', '0 to 160'],
    ['further from a value outside a range of one number', 'a: 50 | range: 52 52', '30 to 70'],
    ['without a range, from a hundredth to a hundredfold', 'a: 20', '0.2 to 2000'],
    ['with a range of its one number too', 'a: 20 | range: 20 20', '0.2 to 2000'],
    ['of a negative input without a range too', 'a: -20', '-2000 to -0.2'],
    ['of 0 without a range, from −1 to 1', 'a: 0', '-1 to 1'],
    ['of 0 without a range, in the unit of the cell', 'a [EUR/h]: 0', '-1 to 1'],
    ['of 0 with a range of 0, from 0', 'a: 0 | range: 0 0', '0 to 1'],
    ['stops at 0 where low is not negative', 'a: 2 | range: 1 3', '0 to 22'],
    ['stops at 0 where low is 0', 'a: 2 | range: 0 3', '0 to 32'],
    ['does not stop at 0 where low is negative', 'a: 2 | range: -1 3', '-38 to 42'],
    ['does not stop at 0 where the value is negative', 'a: -1 | range: 1 3', '-41 to 39'],
    ['below 0 it reaches both ways', 'a: -2 | range: -3 -1', '-22 to 18'],
    ['stops at 100 for a share in %', 'a [%]: 95 | range: 90 98', '15 to 100'],
    ['at both ends for a wide share', 'a [%]: 50 | range: 10 90', '0 to 100'],
    ['at 100 for a share without a range', 'a [%]: 95', '0.95 to 100'],
    ['at 100 for a share of 100', 'a [%]: 100 | range: 100 100', '1 to 100'],
    ['at 100 for a share that may be negative', 'a [%]: 5 | range: -5 50', '-545 to 100'],
    ['not at 100 for a % whose range goes above it', 'a [%]: 90 | range: 50 150', '0 to 1090'],
    ['not at 100 for a % that stands above it', 'a [%]: 150 | range: 50 100', '0 to 1150'],
    ['not at 100 for a rate in % a year', 'a [%/year]: 50 | range: 40 60', '0 to 250'],
    ['not at 1 for a plain share', 'a: 0.5 | range: 0.4 0.6', '0 to 2.5'],
    ['is worked out to all digits', 'a: 0.1 | range: 0.07 0.2', '0 to 1.4'],
    [
      'keeps 34 digits',
      'a: 1.000000000000000000000000000000001',
      '0.01000000000000000000000000000000001 to 100.0000000000000000000000000000001',
    ],
  ])('%s', (_claim, line, expected) => {
    expect(range(line)).toBe(expected);
  });

  it.each([
    ["takes a plan's own number as certain", 'a: 50 | range: 49 52 | in A: 30', 'A', '0.3 to 3000'],
    ['and the shared one with its range', 'a: 50 | range: 49 52 | in A: 30\nb: 1 | in B: 1', 'B', '20 to 80'],
  ])('%s', (_claim, line, plan, expected) => {
    expect(range(line, plan)).toBe(expected);
  });

  const number = fc.integer({ min: -2000, max: 2000 }).map((n) => decimal(n).dividedBy(8));
  const unit = fc.constantFrom('', '%');

  test('is never empty, and today’s value is in it', () => {
    fc.assert(
      fc.property(number, fc.option(fc.tuple(number, number)), unit, (base, ends, unitText) => {
        const [low, high] = [...(ends ?? [])].sort((a, b) => a.cmp(b));
        const { from, to } = defaultRange(leverOf(base, low, high, unitText));
        expect(from.lt(to) && from.lte(base) && to.gte(base)).toBe(true);
      }),
    );
  });

  test('reaches nine widths beyond the range, whatever stands today, where neither 0 nor 100 % stops it', () => {
    fc.assert(
      fc.property(number, number, number, (base, a, b) => {
        const [low, high] = a.lt(b) ? [a, b] : [b, a];
        fc.pre(low.lt(high) && low.isNegative());
        const { from, to } = defaultRange(leverOf(base, low, high));
        const far = high.minus(low).times(9);
        expect(from.lte(low.minus(far)) && to.gte(high.plus(far))).toBe(true);
      }),
    );
  });
});

describe('where to look is a guess', () => {
  const guessed = (line: string): boolean => {
    const model = modelOf(line);
    return isGuess(lever(asked(model, 'a').view, idOf(model, 'a'))!);
  };
  it.each([
    ['of 0 without a range', 'a: 0', true],
    ['of 0 with a range of 0', 'a: 0 | range: 0 0', true],
    ['but not of 0 with a range', 'a: 0 | range: 0 3', false],
    ['nor of another number', 'a: 2', false],
  ])('%s', (_claim, line, expected) => expect(guessed(line)).toBe(expected));
});

describe('the possible part of it', () => {
  const possible = (line: string): string => {
    const model = modelOf(line);
    const { from, to } = possibleRange(lever(asked(model, 'a').view, idOf(model, 'a'))!);
    return `${from.toString()} to ${to.toString()}`;
  };
  it.each([
    ['of an amount of things begins at 0', 'a [plant]: 0', '0 to 1'],
    ['of a rate of things too', 'a [plant/week]: 0', '0 to 1'],
    ['of a time too', 'a [day]: 0', '0 to 1'],
    ['of money does not, as it may be owed', 'a [EUR/h]: 0', '-1 to 1'],
    ['nor of a plain number', 'a: 0', '-1 to 1'],
    ['nor of a share', 'a [%]: 0', '-1 to 1'],
    ['nor of a difference of temperatures', 'a [K]: 0', '-1 to 1'],
    ['nor where its own range lies below 0', 'a [day]: 0 | range: -1 1', '-20 to 20'],
    ['nor where it stands below 0', 'a [plant]: -2', '-200 to -0.02'],
    ['is all of it elsewhere', 'a [plant]: 20', '0.2 to 2000'],
  ])('%s', (_claim, line, expected) => expect(possible(line)).toBe(expected));
});
