import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exponential, growth, logarithm, logarithm10, power, sine, wholePower } from '../../src/core/elementary';
import { decimal, type Decimal } from '../../src/core/number';

/** A float64 to the last bit: a Decimal made from its shortest text may differ by half a unit in the last place. */
function exactOf(x: number): Decimal {
  let [whole, halvings] = [x, 0];
  for (; !Number.isInteger(whole); whole *= 2) halvings += 1;
  return decimal(BigInt(whole).toString()).dividedBy(decimal(2).pow(halvings));
}

/** Spacing of the float64 numbers at a normal number. */
function lastPlace(x: number): number {
  return 2 ** Math.max(-1074, Math.floor(Math.log2(Math.abs(x))) - 52);
}

/** How many units in the last place a value is off. */
function off(value: number, exact: Decimal): number {
  return exactOf(value)
    .minus(exact)
    .abs()
    .dividedBy(exactOf(lastPlace(exact.toNumber())))
    .toNumber();
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** Positive numbers of every size. */
const anySize = fc.tuple(between(1, 2), fc.integer({ min: -1000, max: 1000 })).map(([m, e]) => m * 2 ** e);

type Worst = readonly [worst: number, at: readonly number[]];

/** The largest error that a function makes on drawn arguments. */
function worstOf(
  args: fc.Arbitrary<readonly number[]>,
  value: (...args: number[]) => number,
  exact: (...args: Decimal[]) => Decimal,
): Worst {
  let worst: Worst = [0, []];
  for (const drawn of fc.sample(args, { numRuns: 3000, seed: 1 })) {
    const error = off(value(...drawn), exact(...drawn.map(exactOf)));
    if (!(error <= worst[0])) worst = [error, drawn];
  }
  return worst;
}

/** Rates that still count beside 1 in 34 digits. */
const rates = (size: number): fc.Arbitrary<number> =>
  between(-size, size).filter((rate) => Math.abs(rate) > size / 1e6);
const periods = between(-40, 40).filter((n) => Math.abs(n) > 1e-3);
const grown = (rate: Decimal, n: Decimal): Decimal => rate.plus(1).pow(n).minus(1);

const one = (x: fc.Arbitrary<number>): fc.Arbitrary<readonly number[]> => x.map((value) => [value]);

describe('errors stay within what is said, in units in the last place:', { timeout: 60_000 }, () => {
  it.each<[claim: string, bound: number, worst: () => Worst]>([
    ['exponential', 0.52, () => worstOf(one(between(-700, 700)), exponential, (x) => x.exp())],
    ['exponential near 0', 0.52, () => worstOf(one(between(-0.1, 0.1)), exponential, (x) => x.exp())],
    ['logarithm', 0.51, () => worstOf(one(anySize), logarithm, (x) => x.ln())],
    ['logarithm near 1', 0.51, () => worstOf(one(between(0.9, 1.1)), logarithm, (x) => x.ln())],
    ['logarithm to base 10', 1.6, () => worstOf(one(anySize), logarithm10, (x) => x.log())],
    ['power', 0.52, () => worstOf(fc.tuple(between(1e-6, 1e6), between(-20, 20)), power, (x, y) => x.pow(y))],
    ['root', 0.52, () => worstOf(fc.tuple(anySize, fc.constantFrom(0.5, 1 / 3, 0.1)), power, (x, y) => x.pow(y))],
    ['growth', 2, () => worstOf(fc.tuple(rates(0.9), periods), growth, grown)],
    ['growth near 0', 2, () => worstOf(fc.tuple(rates(1e-9), periods), growth, grown)],
    ['sine', 1, () => worstOf(one(between(-1, 1)), sine, (x) => x.sin())],
  ])('%s: %d', (_claim, bound, worst) => {
    const [error, at] = worst();
    expect([error <= bound, error, at]).toEqual([true, error, at]);
  });

  it('whole powers: the exponent', () => {
    for (const n of [2, 3, 7, 10, 16, -1, -5, -16]) {
      const [error] = worstOf(
        one(between(0.01, 100)),
        (x) => wholePower(x, n),
        (x) => x.pow(n),
      );
      expect(error).toBeLessThanOrEqual(Math.abs(n));
    }
  });
});

describe('known values', () => {
  it.each<[claim: string, value: number, result: number]>([
    ['e^0', exponential(0), 1],
    ['e^710', exponential(710), Infinity],
    ['e^-746', exponential(-746), 0],
    ['e^NaN', exponential(NaN), NaN],
    ['log 1', logarithm(1), 0],
    ['log 0', logarithm(0), -Infinity],
    ['log -1', logarithm(-1), NaN],
    ['log Infinity', logarithm(Infinity), Infinity],
    ['log of the least number', logarithm(2 ** -1074), Math.log(2 ** -1074)],
    ['log10 1000', logarithm10(1000), 3],
    ['log10 1e22', logarithm10(1e22), 22],
    ['log10 0', logarithm10(0), -Infinity],
    ['0^0', power(0, 0), 1],
    ['0^2.5', power(0, 2.5), 0],
    ['0^-1', power(0, -1), Infinity],
    ['(-8)^(1/3)', power(-8, 1 / 3), NaN],
    ['(-2)^3', power(-2, 3), -8],
    ['(-2)^21', power(-2, 21), -(2 ** 21)],
    ['(-2)^20', power(-2, 20), 2 ** 20],
    ['2^0.5', power(2, 0.5), Math.SQRT2],
    ['4^0.5', power(4, 0.5), 2],
    ['1^1e300', power(1, 1e300), 1],
    ['10^400', power(10, 400), Infinity],
    ['NaN^2', power(NaN, 2), NaN],
    ['10^15', wholePower(10, 15), 1e15],
    ['3^-2', wholePower(3, -2), 1 / 9],
    ['growth at 0', growth(0, 12), 0],
    ['growth of nothing', growth(0.1, 0), 0],
    ['growth by doubling', growth(1, 10), 1023],
    ['growth at -100 %', growth(-1, 3), -1],
    ['growth below -100 %', growth(-1.5, 3), NaN],
    ['sine of 0', sine(0), 0],
  ])('%s', (_claim, value, result) => expect(value).toBe(result));
});
