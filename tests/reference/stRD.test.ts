import { describe, expect, it } from 'vitest';
import { sampleStandardDeviation } from 'simple-statistics';
import checks from '../../shared/checks/nistUnivariate.json';
import { decimal } from '../../src/core/number';
import { momentsOf } from '../../src/study/moments';

/*
 * NIST Statistical Reference Datasets, univariate. What is asked is all that float64 data can give: a datum such as
 * 10000000.1 is stored with an error of up to 1e-9, which the standard deviation of NumAcc4, 0.1, must show as 1e-8.
 */

function valuesOf(set: (typeof checks.sets)[number]): number[] {
  const first = set.values.split(' ').map(Number);
  const pair = set.then500Times?.split(' ').map(Number) ?? [];
  return [...first, ...Array.from({ length: 500 }, () => pair).flat()];
}

/** Digits on which two numbers agree: -log10 of the relative difference, 16 at most. */
function digits(value: number, certified: string): number {
  const off = Math.abs(value - Number(certified)) / Math.abs(Number(certified));
  return Math.min(16, -Math.log10(off));
}

const sdDigits: Readonly<Record<string, number>> = { NumAcc3: 9, NumAcc4: 8 };

describe.each(checks.sets)('$name', (set) => {
  const values = valuesOf(set);
  const { mean, sd } = momentsOf(values);

  it('has all its data', () => expect(values.length).toBe(set.count));

  it('mean, 14 digits', () => expect(digits(mean, set.mean)).toBeGreaterThan(14));

  it('standard deviation, as many digits as the data leave', () => {
    expect(digits(sd, set.sd)).toBeGreaterThan(sdDigits[set.name] ?? 13);
  });

  it('standard deviation, within what rounding the data does to it, of the exact one of the stored numbers', () => {
    const exact = values.map((value) => decimal(value.toPrecision(30)));
    const middle = exact.reduce((sum, value) => sum.plus(value)).dividedBy(values.length);
    const squares = exact.map((value) => value.minus(middle).pow(2)).reduce((sum, value) => sum.plus(value));
    const stored = squares.dividedBy(values.length - 1).sqrt();
    expect(decimal(sd).minus(stored).abs().dividedBy(stored).toNumber()).toBeLessThan(1e-14);
  });

  it('standard deviation as an independent library has it', () => {
    expect(digits(sd, String(sampleStandardDeviation(values)))).toBeGreaterThan(12);
  });
});
