import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import type { Curve } from '../../src/study/curve';
import { bestAlong, bestAmongNumbers, type BestStretch } from '../../src/study/envelope';

type Height = (x: Decimal) => Decimal;

function curveOf(exact: Height): Curve {
  return { exact, float: (x) => exact(decimal(x)).toNumber() };
}

function told({ from, to, best, isBehind }: BestStretch): string {
  const [start, end] = [from, to].map((x) => x.toSignificantDigits(18).toString());
  return `${isBehind ? 'behind ' : ''}${start}..${end} ${best.join('+') || 'none'}`;
}

function along(way: 'highest' | 'lowest', ...heights: Height[]): string[] {
  return bestAlong(heights.map(curveOf), { from: decimal(0), to: decimal(10) }, way).map(told);
}

const level =
  (height: number): Height =>
  () =>
    decimal(height);
const rising: Height = (x) => x;

describe('along an input the best of several results', () => {
  it.each<[string, 'highest' | 'lowest', Height[], string[]]>([
    ['is one throughout', 'lowest', [level(3), level(2), level(4)], ['0..10 1']],
    ['is the other where more is better', 'highest', [level(3), level(2), level(4)], ['0..10 2']],
    [
      'changes from one to the next where they meet',
      'lowest',
      [rising, (x) => x.dividedBy(2).plus(1), level(4)],
      ['0..2 0', '2..6 1', '6..10 2'],
    ],
    [
      'changes at a third to 18 digits',
      'lowest',
      [(x) => x.times(3), level(1)],
      ['0..0.333333333333333333 0', '0.333333333333333333..10 1'],
    ],
    [
      'may be a third one for less than a step',
      'lowest',
      [rising, level(5.001), (x) => decimal(5.0005).plus(x.minus(5.0005).abs().times(0.1))],
      ['0..5.0005 0', '5.0005..5.0055 2', '5.0055..10 1'],
    ],
    [
      'changes at a jump that holds from there',
      'lowest',
      [(x) => decimal(x.gte(7.001) ? 0 : 5), level(3), level(8)],
      ['0..7.001 1', '7.001..10 0'],
    ],
    [
      'changes right behind a jump that comes after it',
      'lowest',
      [(x) => decimal(x.gt(7) ? 0 : 5), level(3)],
      ['0..7 1', 'behind 7..10 0'],
    ],
    [
      'is told once where one jumps past two',
      'lowest',
      [(x) => decimal(x.gte(4) ? 0 : 9), rising, level(3)],
      ['0..3 1', '3..4 2', '4..10 0'],
    ],
    ['is several where they are alike', 'lowest', [rising, level(20), rising], ['0..10 0+2']],
    [
      'is several from where they run together',
      'lowest',
      [(x) => (x.lt(4) ? x : decimal(4)), level(4)],
      ['0..4 0', '4..10 0+1'],
    ],
    [
      'is several up to where they part',
      'lowest',
      [(x) => (x.gt(4) ? x : decimal(4)), level(4)],
      ['0..4 0+1', '4..10 1'],
    ],
    [
      'is among those that can be computed',
      'lowest',
      [(x) => decimal(x.lt(4.01) ? NaN : 1), level(3)],
      ['0..4.01 1', '4.01..10 0'],
    ],
    [
      'is none where none can be computed',
      'lowest',
      [(x) => decimal(x.lt(4.01) ? NaN : 1)],
      ['0..4.01 none', '4.01..10 0'],
    ],
  ])('%s', (_claim, way, heights, expected) => expect(along(way, ...heights)).toEqual(expected));
});

it('the best of several numbers are all that are alike, and never one that cannot be computed', () => {
  const numbers = [NaN, 2, 1, 2, Infinity].map(decimal);
  expect(bestAmongNumbers(numbers, 'highest')).toEqual([1, 3]);
  expect(bestAmongNumbers(numbers, 'lowest')).toEqual([2]);
  expect(bestAmongNumbers([decimal(NaN)], 'lowest')).toEqual([]);
});

/** A straight line with a step, and a stretch where it cannot be computed; all places in tenths. */
const line = fc
  .record({
    start: fc.integer({ min: -20, max: 20 }),
    slope: fc.integer({ min: -6, max: 6 }),
    stepAt: fc.integer({ min: 1, max: 99 }),
    step: fc.integer({ min: -15, max: 15 }),
    gap: fc.option(fc.integer({ min: 10, max: 90 }), { freq: 5, nil: Infinity }),
  })
  .map(({ start, slope, stepAt, step, gap }): Curve => {
    const isMissing = (tenths: number): boolean => tenths >= gap && tenths <= gap + 3;
    return {
      exact: (x) => {
        const tenths = x.times(10);
        if (isMissing(tenths.toNumber())) return decimal(NaN);
        return decimal(start)
          .plus(x.times(slope))
          .plus(tenths.gte(stepAt) ? step : 0);
      },
      float: (x) => (isMissing(x * 10) ? NaN : start + x * slope + (x * 10 >= stepAt ? step : 0)),
    };
  });

describe('the stretches of random results', () => {
  it.each(['highest', 'lowest'] as const)(
    'agree with a dense grid, the %s the best',
    (way) => {
      fc.assert(
        fc.property(fc.array(line, { minLength: 1, maxLength: 4 }), (curves) => {
          const stretches = bestAlong(curves, { from: decimal(0), to: decimal(10) }, way);
          expect(stretches[0]!.from.eq(0) && stretches.at(-1)!.to.eq(10)).toBe(true);
          stretches.slice(1).forEach(({ from, best }, i) => {
            expect(from.eq(stretches[i]!.to)).toBe(true);
            expect(best).not.toEqual(stretches[i]!.best);
          });
          for (let k = 0; k < 400; k += 1) {
            // Never one of the places where lines of whole slopes meet.
            const x = decimal(k).times(0.025).plus('0.00713');
            const here = stretches.find(({ from, to }) => x.gt(from) && x.lt(to))!;
            expect(here.best, x.toString()).toEqual(
              bestAmongNumbers(
                curves.map((curve) => curve.exact(x)),
                way,
              ),
            );
          }
        }),
        { numRuns: 12 },
      );
    },
    30_000,
  );
});
