import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { breakeven } from '../../src/study/breakeven';
import { defaultRange } from '../../src/study/searchRange';
import { curveOf, said, search } from './curveOf';
import { leverOf } from './leverOf';

type Case = readonly [claim: string, formula: string, from: string, to: string, found: string];

/** Each formula of x, searched from one number to another. */
function find(cases: readonly Case[]): void {
  it.each(cases)('%s: %s from %s to %s gives %s', (_claim, formula, from, to, found) => {
    expect(said(search(curveOf(formula), from, to))).toBe(found);
  });
}

describe('a crossing', () => {
  find([
    ['rises', 'x - 5', '0', '10', '5 up'],
    ['falls', '5 - x', '0', '10', '5 down'],
    ['is exact', 'x - 1.23456789012345', '0', '10', '1.23456789012345 up'],
    ['is below 0', 'x + 5', '-10', '0', '-5 up'],
    ['is at 0', 'x', '-3', '4', '0 up'],
    ['is at 0, of a steep curve', '1000000 * x', '-3', '4', '0 up'],
    ['is small beside its range', '1000 * x - 0.002', '0', '1000', '0.000002 up'],
    ['is small beside a very wide range', '1 - x', '0', '1e20', '1 down'],
    ['is very small beside its range', '0.000000001 - x', '0', '1e10', '1e-9 down'],
    ['is small at both sides of 0', 'x - 0.00001', '-1000', '1000', '0.00001 up'],
    ['is one of two', '(x - 2) * (x - 5)', '0', '10', '2 down, 5 up'],
    ['is one of three', '(x - 2) * (x - 5) * (x - 7)', '0', '10', '2 up, 5 down, 7 up'],
    ['is at the upper end, as the result gets there', 'x - 10', '0', '10', '10 up'],
    ['is at the lower end, as the result leaves it', '-x', '0', '10', '0 down'],
    ['bends', 'x ^ 3 - 8', '-10', '10', '2 up'],
    ['is flat', '(x - 3) ^ 5', '0', '10', '3 up'],
    ['is one of two that lie close', '(x - 3) * (x - 3.0000001)', '0', '10', '3 down, 3.0000001 up'],
    ['is one of two that lie close above', '(x - 3) * (3.0000001 - x)', '0', '10', '3 up, 3.0000001 down'],
    ['is where a bend gets to the target', 'min(x, 5) - 5', '0', '10', '5 up'],
    ['is where a bend leaves the target', '5 - max(x, 5)', '0', '10', '5 down'],
  ]);

  it('of digits without end is given by a number within a share of 1e-18 of it', () => {
    const [found] = search(curveOf('x ^ 2 - 2'), '0', '10').crossings;
    // √2: OEIS A002193.
    const share = found!.value.dividedBy('1.4142135623730950488016887242096981').minus(1).abs();
    expect(share.toNumber()).toBeLessThanOrEqual(1e-18);
  });

  it.each([
    ['5', 'x', '5 up'],
    ['-5', 'x', '-5 up'],
    ['0.1', 'x - 5', '5.1 up'],
    ['1e9', '1000 * x', '1000000 up'],
    ['4', 'x ^ 2', '-2 down, 2 up'],
    ['120', 'x', 'nowhere'],
    ['-120', 'x', 'everywhere'],
  ])('with target %s of %s: %s', (target, formula, found) => {
    const size = formula.startsWith('1000') ? '1e7' : '100';
    expect(said(search(curveOf(formula), `-${size}`, size, target))).toBe(found);
  });

  it('close to another is found where a given point lies between them', () => {
    const spike = curveOf('x > 3.00002 and x < 3.00004 ? 1 : -1');
    expect(said(search(spike, '0', '10'))).toBe('nowhere');
    const found = search(spike, '0', '10', '0', ['3.00003']).crossings;
    expect(found.map(({ value, direction }) => `${value.toPrecision(9)} ${direction}`)).toEqual([
      '3.00002000 up',
      '3.00004000 down',
    ]);
  });

  it('is not looked for at given points outside the range', () => {
    expect(said(search(curveOf('x - 5'), '0', '4', '0', ['9', '-1']))).toBe('nowhere');
  });
});

describe('a touch', () => {
  find([
    ['from above', '(x - 5) ^ 2', '0', '10', '5 touch'],
    ['from below', '-(x - 5) ^ 2', '0', '10', '5 touch'],
    ['between the points looked at', '(x - 3.14159265358979) ^ 2', '0', '10', '3.14159265358979 touch'],
    ['from below, between them', '-(x - 3.14159265358979) ^ 2', '0', '10', '3.14159265358979 touch'],
    ['with a corner', 'abs(x - 5)', '0', '10', '5 touch'],
    ['with a corner, between them', 'abs(x - 3.14159265358979)', '0', '10', '3.14159265358979 touch'],
    ['very flat', '(x - 5) ^ 4', '0', '10', '5 touch'],
    ['beside a crossing', '(x - 5) ^ 2 * (x - 8)', '0', '10', '5 touch, 8 up'],
    ['twice', '(x - 2) ^ 2 * (x - 5) ^ 2', '0', '10', '2 touch, 5 touch'],
    ['at 0', 'x ^ 2', '-3', '4', '0 touch'],
    ['is none just above the target', '(x - 5) ^ 2 + 0.000000001', '0', '10', 'everywhere'],
    ['is none just below it', '-(x - 5) ^ 2 - 0.000000001', '0', '10', 'nowhere'],
  ]);

  it('that is computed by way of large numbers is right to 12 digits', () => {
    const { crossings } = search(curveOf('x ^ 2 - 10 * x + 25'), '0', '10');
    expect(crossings.map(({ value, direction }) => `${value.toPrecision(12)} ${direction}`)).toEqual([
      '5.00000000000 touch',
    ]);
  });
});

describe('a jump', () => {
  // A plain curve, so that no tie of the formulas moves the place of the jump.
  const step = (at: string, isReachedThere: boolean, below: number, above: number) => {
    const isPast = (x: Decimal) => (isReachedThere ? x.gte(at) : x.gt(at));
    return {
      exact: (x: Decimal) => decimal(isPast(x) ? above : below),
      float: (x: number) => (isPast(decimal(x)) ? above : below),
    };
  };

  it.each([
    ['up, reached at the jump', '5', true, -1, 1],
    ['up, reached at the jump, between the points looked at', '3.14159', true, -1, 1],
    ['up, into the target', '5', true, -1, 0],
    ['up, a high one', '5', true, -1000000, 1000000],
    ['down, left after the jump', '5', false, 1, -1],
    ['down, from the target', '5', false, 0, -1],
  ])('%s: the value is there', (_claim, at, isReachedThere, below, above) => {
    const direction = above > below ? 'up' : 'down';
    expect(said(search(step(at, isReachedThere, below, above), '0', '10'))).toBe(`${at} ${direction}`);
  });

  it.each([
    ['up, reached after the jump', false, -1, 1],
    ['down, left at the jump', true, 1, -1],
  ])('%s: the value is the nearest one on the side that reaches the target', (_claim, isReachedThere, below, above) => {
    const curve = step('5', isReachedThere, below, above);
    const found = search(curve, '0', '10');
    expect(found.breaks).toEqual([]);
    expect(found.crossings.map(({ direction }) => direction)).toEqual([above > below ? 'up' : 'down']);
    const value = found.crossings[0]!.value;
    expect(curve.exact(value).toNumber()).toBe(1);
    expect(value.minus(5).abs().toNumber()).toBeLessThan(1e-20);
  });

  find([
    ['of whole numbers', 'floor(x) - 5', '0', '20', '5 up'],
    ['of whole numbers, falling', '5 - ceil(x)', '0', '20', '5 down'],
    ['of a comparison', 'x >= 5 ? 1 : -1', '0', '20', '5 up'],
    ['of a comparison, falling', 'x <= 5 ? 1 : -1', '0', '20', '5 down'],
    ['up and down', 'x >= 5 and x <= 8 ? 1 : -1', '0', '20', '5 up, 8 down'],
  ]);

  it('of whole numbers between the target is right to 11 digits, and reaches it', () => {
    const curve = curveOf('ceil(x) - 4.5');
    const { crossings } = search(curve, '0', '20');
    expect(crossings.map(({ value }) => value.toPrecision(11))).toEqual(['4.0000000000']);
    expect(curve.exact(crossings[0]!.value).toString()).toBe('0.5');
  });
});

describe('a break', () => {
  find([
    ['at a pole', '1 / (5 - x)', '0', '10', 'breaks 5'],
    ['at a pole between the points looked at', '1 / (3.14159265358979 - x)', '0', '10', 'breaks 3.14159265358979'],
    ['at a pole, rising', '1 / (x - 5)', '0', '10', 'breaks 5'],
    ['at a steep pole', '1 / (x - 5) ^ 3', '0', '10', 'breaks 5'],
    ['at a weak pole', '(x > 5 ? 1 : -1) / sqrt(abs(x - 5))', '0', '10', 'breaks 5'],
    ['at a small pole', '0.000001 / (x - 5)', '0', '10', 'breaks 5'],
    ['at a pole beside a crossing', '1 / (x - 5) - 1', '0', '10', '6 down, breaks 5'],
    ['at two poles', '1 / ((x - 3) * (x - 5))', '0', '10', 'breaks 3 5'],
    ['at a point that cannot be computed', '(x - 3) ^ 2 / (x - 3)', '0', '10', 'breaks 3'],
    ['is none at a pole without a change of side', '1 / (x - 5) ^ 2', '0', '10', 'everywhere'],
    ['is none at a point without a change of side', 'x * (x - 5) / (x - 5) + 1', '0', '10', 'everywhere'],
    ['is none where a curve begins', 'sqrt(x - 3)', '0', '10', 'everywhere'],
    ['is none where a curve ends', 'sqrt(3 - x) - 1', '0', '10', '2 down'],
    [
      'is none where crossings lie to both sides of it',
      '1 - 0.000001 / (x - 5) ^ 2',
      '0',
      '10',
      '4.999 down, 5.001 up',
    ],
    ['lies between crossings', '1 + 0.001 / (x - 5)', '0', '10', '4.999 down, breaks 5'],
  ]);

  find([
    ['hides no crossing next to where a curve begins', '0.0001 / sqrt(x - 5) - 1', '0', '10', '5.00000001 down'],
    ['or ends', '1 - 0.0001 / (5 - x)', '0', '5', '4.9999 down'],
    ['or next to 0', '1 - 0.000000001 / x', '0', '10', '1e-9 up'],
  ]);

  it.each([
    ['wide', '3', '7'],
    ['narrow', '3.00011', '3.00012'],
  ])('across a %s gap is where the gap begins, to 11 digits', (_claim, from, to) => {
    const { crossings, breaks, holds } = search(curveOf(`x < ${from} ? -1 : (x < ${to} ? log(0) : 1)`), '0', '10');
    expect([crossings, holds]).toEqual([[], null]);
    expect(breaks.map((at) => at.toPrecision(11))).toEqual([decimal(from).toPrecision(11)]);
  });

  it('at a pole whose value is filled in by the target is there to 11 digits, as a tie fills in a share of 1e-12', () => {
    const { crossings, breaks } = search(curveOf('x == 5 ? 0 : 1 / (5 - x)'), '0', '10');
    expect([crossings, breaks.map((at) => at.toPrecision(11))]).toEqual([[], ['5.0000000000']]);
  });

  it('is none across a gap without a change of side', () => {
    expect(said(search(curveOf('x < 3 ? 1 : (x < 7 ? log(0) : 2)'), '0', '10'))).toBe('everywhere');
  });
});

describe('without a crossing or break', () => {
  find([
    ['the result holds everywhere', 'x + 1', '0', '10', 'everywhere'],
    ['or nowhere', '-x - 1', '0', '10', 'nowhere'],
    ['everywhere at the target itself', 'x * 0', '0', '10', 'everywhere'],
    ['everywhere on a part of it at the target', 'max(x, 5) - 5', '0', '10', 'everywhere'],
    ['everywhere where it only leans on the target', 'max(0, abs(x - 5) - 1)', '0', '10', 'everywhere'],
    ['nowhere just below the target', '-0.000000000001', '0', '10', 'nowhere'],
    ['nor any value, neither', 'log(-1) * x', '0', '10', ''],
  ]);

  it.each(['everywhere', 'nowhere'])('a constant holds %s', (word) => {
    expect(said(search(curveOf(word === 'nowhere' ? '3 + 0 * x' : '4 + 0 * x'), '0', '10', '4'))).toBe(word);
  });

  it('noise of the arithmetic around the target makes none', () => {
    expect(said(search(curveOf('x / 3 * 3 - x'), '0', '10'))).toBe('everywhere');
  });
});

it('the range searched is told', () => {
  const { range } = search(curveOf('x'), '-1', '7.5');
  expect([range.from, range.to].map(String)).toEqual(['-1', '7.5']);
});

describe('over the default range', () => {
  const widths = 9;
  /** Where an input with a range stands; its crossing less far beyond the range than is surely looked. */
  const stand = fc
    .record({
      low: fc.integer({ min: 0, max: 400 }),
      width: fc.integer({ min: 1, max: 400 }),
      base: fc.integer({ min: 0, max: 40_000 }),
      at: fc.double({ min: -widths, max: widths, noNaN: true }),
    })
    .map(({ low, width, base, at }) => ({ low, high: low + width, base, crossing: Math.fround(low + width * at) }))
    .filter(({ crossing }) => crossing > 0);
  const shapes: readonly ((crossing: Decimal) => (x: Decimal) => Decimal)[] = [
    (crossing) => (x) => crossing.minus(x).times(3),
    (crossing) => (x) => x.times(x).minus(crossing.times(crossing)),
    (crossing) => (x) =>
      decimal(1)
        .dividedBy(x.plus(1))
        .minus(decimal(1).dividedBy(crossing.plus(1))),
    // A bend well before the crossing.
    (crossing) => (x) => (x.lt(crossing.dividedBy(2)) ? crossing.dividedBy(-2) : x.minus(crossing)),
  ];

  test.each(shapes.map((shape, i) => [i, shape] as const))(
    'the crossing is found to 12 digits from every base, inside its range or outside: curve %i',
    (_i, shape) => {
      fc.assert(
        fc.property(stand, ({ low, high, base, crossing }) => {
          const height = shape(decimal(crossing));
          const curve = { exact: height, float: (x: number) => height(decimal(x)).toNumber() };
          const range = defaultRange(leverOf(decimal(base), decimal(low), decimal(high)));
          const { crossings } = breakeven(curve, range, decimal(0), [decimal(base)]);
          const found = crossings.map(({ value }) => value.toSignificantDigits(12).toString());
          expect(found).toEqual([decimal(crossing).toSignificantDigits(12).toString()]);
        }),
        { numRuns: 25 },
      );
    },
  );
});
