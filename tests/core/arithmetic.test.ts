import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Arithmetic } from '../../src/core/arithmetic';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';

type Unary = 'floor' | 'ceil' | 'absolute' | 'negate' | 'squareRoot' | 'exponential' | 'logarithm' | 'logarithm10';
type Binary = 'add' | 'subtract' | 'multiply' | 'divide' | 'power' | 'smaller' | 'larger';

const unary = ['floor', 'ceil', 'absolute', 'negate', 'squareRoot', 'exponential', 'logarithm', 'logarithm10'] as const;
const binary = ['add', 'subtract', 'multiply', 'divide', 'power', 'smaller', 'larger'] as const;

/** The same calculation in both arithmetics, as float64; 0 without a sign. */
function both(compute: <T>(m: Arithmetic<T>) => T): number[] {
  return [exact.toNumber(compute(exact)) + 0, float.toNumber(compute(float)) + 0];
}

const one = (op: Unary, x: string): number[] => both((m) => m[op](m.read(x)));
const two = (op: Binary, a: string, b: string): number[] => both((m) => m[op](m.read(a), m.read(b)));
const rounded = (x: string, decimals: number): number[] => both((m) => m.round(m.read(x), decimals));
const ordered = (a: string, b: string): number[] =>
  [exact, float].map((m) => compareIn(m as Arithmetic<unknown>, a, b));

function compareIn<T>(m: Arithmetic<T>, a: string, b: string): number {
  return m.compare(m.read(a), m.read(b)) + 0;
}

describe('both arithmetics round down and up alike:', () => {
  it.each<[x: string, down: number, up: number]>([
    ['2', 2, 2],
    ['2.1', 2, 3],
    ['-2.1', -3, -2],
    ['-0.5', -1, 0],
    ['0', 0, 0],
    ['2.99999999999', 2, 3],
    ['2.9999999999999', 3, 3],
    ['3.0000000000001', 3, 3],
    ['3.00000000001', 3, 4],
    ['-2.9999999999999', -3, -3],
    ['-3.0000000000001', -3, -3],
    ['1e-13', 0, 1],
    ['-1e-13', -1, 0],
    ['999999.99999', 999999, 1000000],
    ['999999.9999999999', 1000000, 1000000],
  ])('%s between %d and %d', (x, down, up) => {
    expect(one('floor', x)).toEqual([down, down]);
    expect(one('ceil', x)).toEqual([up, up]);
  });

  // Beyond 1e11 the share alone would reach other whole numbers: a tenth is the most that is taken for none.
  it.each<[x: string, down: number, up: number]>([
    ['1000000000000.5', 1e12, 1e12 + 1],
    ['-1000000000000.5', -1e12 - 1, -1e12],
    ['600000000000.4', 6e11, 6e11 + 1],
    ['-600000000000.6', -6e11 - 1, -6e11],
    ['1000000000000.05', 1e12, 1e12],
    ['-1000000000000.95', -1e12 - 1, -1e12 - 1],
  ])('%s between %d and %d', (x, down, up) => {
    expect(one('floor', x)).toEqual([down, down]);
    expect(one('ceil', x)).toEqual([up, up]);
  });
});

describe('both arithmetics round half away from zero:', () => {
  it.each<[x: string, decimals: number, result: number]>([
    ['2.5', 0, 3],
    ['-2.5', 0, -3],
    ['2.4', 0, 2],
    ['-0.4', 0, 0],
    ['2.345', 2, 2.35],
    ['-2.345', 2, -2.35],
    ['1.005', 2, 1.01],
    ['2.49999999999999', 0, 3],
    ['2.499999999999', 0, 3],
    ['2.49999999999', 0, 2],
    ['123.456', 0, 123],
    ['0', 3, 0],
    ['7', 9, 7],
  ])('%s to %d decimals is %d', (x, decimals, result) => expect(rounded(x, decimals)).toEqual([result, result]));

  // However wide the tolerance gets, a number that needs no rounding stays what it is.
  it.each<[x: string, decimals: number]>([
    ['100', 10],
    ['50', 12],
    ['1', 12],
    ['1', 15],
    ['0.1', 15],
    ['500000000000', 0],
    ['1000000000000', 0],
    ['1234567890123456789', 0],
    ['1e33', 0],
    ['1e300', 15],
  ])('%s is itself to %d decimals', (x, decimals) => expect(rounded(x, decimals)).toEqual([Number(x), Number(x)]));
});

describe('both arithmetics take a tie as equal:', () => {
  it.each<[a: string, b: string, order: number]>([
    ['1', '1', 0],
    ['1', '1.0000000000005', 0],
    ['1', '1.00000000001', -1],
    ['1.00000000001', '1', 1],
    ['-1', '-1.0000000000005', 0],
    ['-1', '-1.00000000001', 1],
    ['0', '0', 0],
    ['0', '1e-300', -1],
    ['1e-300', '-1e-300', 1],
    ['1e300', '1.0000000000005e300', 0],
    ['1e-20', '2e-20', -1],
  ])('%s and %s: %d', (a, b, order) => expect(ordered(a, b)).toEqual([order, order]));
});

describe('both arithmetics give powers:', () => {
  it.each<[a: string, b: string, result: number]>([
    ['0', '0', 1],
    ['5', '0', 1],
    ['0', '3', 0],
    ['0', '-1', NaN],
    ['0', '0.5', 0],
    ['-8', '3', -512],
    ['-8', '-1', -0.125],
    ['-8', '0.5', NaN],
    ['-1', '2', 1],
    ['2', '-2', 0.25],
    ['4', '0.5', 2],
    ['1', '1e300', 1],
    ['10', '300', 1e300],
  ])('%s ^ %s is %d', (a, b, result) => expect(two('power', a, b)).toEqual([result, result]));
});

const grown = (rate: string, n: string): number[] => both((m) => m.growth(m.read(rate), m.read(n)));

describe('both arithmetics let things grow, (1 + rate)^n - 1:', () => {
  it.each<[rate: string, n: string, result: number]>([
    ['0', '5', 0],
    ['0.5', '2', 1.25],
    ['1', '-1', -0.5],
    ['-0.5', '3', -0.875],
    ['-1', '3', -1],
    ['0.1', '0', 0],
    ['0.21', '0.5', 0.1],
    ['-2', '0.5', NaN],
    ['-1', '-1', NaN],
    ['1', '1e9', NaN],
  ])('%s, %s: %d', (rate, n, result) => {
    expect(grown(rate, n).map((value) => Math.round(value * 1e14) / 1e14)).toEqual([result, result]);
  });

  it.each<[rate: string, n: string, result: number]>([
    ['1e-17', '5', 5e-17],
    ['-1e-17', '5', -5e-17],
    ['1e-9', '2', 2.000000001e-9],
    ['1e-12', '-3', -2.999999999994e-12],
    ['1e-20', '1e18', 0.010050167084168058],
    ['-1e-30', '2e30', -0.8646647167633873],
  ])('without losing digits near 0: %s, %s', (rate, n, result) => {
    for (const value of grown(rate, n)) expect(Math.abs(value / result - 1)).toBeLessThan(1e-14);
  });
});

describe('what cannot be computed is not known:', () => {
  it.each<[op: Binary, a: string, b: string]>([
    ['divide', '1', '0'],
    ['divide', '0', '0'],
    ['power', '0', '-2'],
    ['power', '-2', '0.1'],
  ])('%s of %s and %s', (op, a, b) => expect(two(op, a, b)).toEqual([NaN, NaN]));

  it.each<[op: Unary, x: string]>([
    ['squareRoot', '-1'],
    ['logarithm', '0'],
    ['logarithm', '-1'],
    ['logarithm10', '0'],
    ['exponential', '1e9'],
  ])('%s of %s', (op, x) => expect(one(op, x)).toEqual([NaN, NaN]));

  it.each(unary)('and %s leaves it so', (op) => expect(both((m) => m[op](m.whole(NaN)))).toEqual([NaN, NaN]));

  it.each(binary)('and %s leaves it so on either side', (op) => {
    for (const other of [0, 1, 2]) {
      expect(both((m) => m[op](m.whole(NaN), m.whole(other)))).toEqual([NaN, NaN]);
      expect(both((m) => m[op](m.whole(other), m.whole(NaN)))).toEqual([NaN, NaN]);
    }
  });

  it('and rounding leaves it so', () => expect(both((m) => m.round(m.whole(NaN), 2))).toEqual([NaN, NaN]));

  it('and it compares as nothing', () => {
    expect(ordered('1', 'NaN')).toEqual([NaN, NaN]);
    expect(ordered('NaN', 'NaN')).toEqual([NaN, NaN]);
    expect([exact.isKnown(exact.whole(NaN)), float.isKnown(NaN), exact.isKnown(exact.whole(0))]).toEqual([
      false,
      false,
      true,
    ]);
  });
});

/** Whole numbers of up to nine digits, moved by a share that is well within or well beyond the tolerance. */
const nearWhole = fc
  .tuple(
    fc.integer({ min: -999_999_999, max: 999_999_999 }),
    fc.constantFrom('0', '1e-15', '-1e-15', '4e-13', '-4e-13', '3e-12', '-3e-12', '1e-9', '0.3', '-0.3', '0.5'),
  )
  .map(([whole, share]) => exact.multiply(exact.whole(whole), exact.add(exact.whole(1), exact.read(share))).toString());

describe('for thousands of numbers near whole ones', { timeout: 60_000 }, () => {
  it.each(['floor', 'ceil'] as const)('%s is the same in both', (op) => {
    fc.assert(
      fc.property(nearWhole, (x) => {
        const [exactly, floating] = one(op, x);
        expect(floating).toBe(exactly);
      }),
      { numRuns: 2000, seed: 1 },
    );
  });

  it('floor is at most the number, but for the tolerance, and above it less 1', () => {
    fc.assert(
      fc.property(nearWhole, (x) => {
        const [floor = NaN] = one('floor', x);
        expect(floor - Number(x)).toBeLessThanOrEqual(1.1e-12 * Math.abs(Number(x)));
        expect(floor).toBeGreaterThan(Number(x) - 1);
      }),
      { numRuns: 2000, seed: 1 },
    );
  });

  it('round is the same in both', () => {
    fc.assert(
      fc.property(nearWhole, fc.integer({ min: 0, max: 2 }), (x, decimals) => {
        const [exactly, floating] = rounded(x, decimals);
        expect(floating).toBe(exactly);
      }),
      { numRuns: 2000, seed: 1 },
    );
  });

  it('comparing is the same in both, and the other way round the opposite', () => {
    fc.assert(
      fc.property(nearWhole, nearWhole, (a, b) => {
        const [exactly, floating] = ordered(a, b);
        expect(floating).toBe(exactly);
        expect(ordered(b, a)).toEqual([0 - exactly!, 0 - exactly!]);
      }),
      { numRuns: 2000, seed: 1 },
    );
  });
});

const size = fc.double({ min: 1e-3, max: 1e3, noNaN: true }).map((x) => x.toPrecision(15));

describe('for thousands of ordinary numbers', { timeout: 60_000 }, () => {
  it.each(binary)('%s agrees to 1e-14 of the larger number met', (op) => {
    fc.assert(
      fc.property(size, size, fc.boolean(), (a, b, negative) => {
        const left = negative && op !== 'power' ? `-${a}` : a;
        const right = op === 'power' ? String(Number(b) % 10) : b;
        const [exactly = NaN, floating = NaN] = two(op, left, right);
        const met = Math.max(Math.abs(exactly), op === 'power' ? 0 : Number(a), op === 'power' ? 0 : Number(b));
        expect(Math.abs(exactly - floating)).toBeLessThanOrEqual(1e-14 * met);
      }),
      { numRuns: 1000, seed: 1 },
    );
  });

  it.each(['squareRoot', 'logarithm', 'logarithm10', 'absolute', 'negate'] as const)('%s agrees to 1e-15', (op) => {
    fc.assert(
      fc.property(size, (x) => {
        const [exactly = NaN, floating = NaN] = one(op, x);
        expect(Math.abs(exactly - floating)).toBeLessThanOrEqual(1e-15 * Math.max(1, Math.abs(exactly)));
      }),
      { numRuns: 1000, seed: 1 },
    );
  });
});
