import { describe, expect, it } from 'vitest';
import { Decimal, decimal } from '../../src/core/number';
import { normalChance, normalQuantile } from '../../src/study/normal';

/** Forty digits, so that tails down to 1e-20 still have twenty. */
const Wide = Decimal.clone({ precision: 60 });
const pi = Wide.acos(-1);

function exactOf(x: number): Decimal {
  return new Wide(x.toPrecision(100));
}

function density(x: Decimal): Decimal {
  return x.pow(2).dividedBy(-2).exp().dividedBy(pi.times(2).sqrt());
}

/** The normal distribution function by its series, 1/2 + φ(x) (x + x³/3 + x⁵/15 + …) (Abramowitz & Stegun 26.2.11). */
function chance(x: Decimal): Decimal {
  let sum = x;
  let term = x;
  for (let n = 1; term.abs().gt('1e-58'); n += 1) {
    term = term
      .times(x)
      .times(x)
      .dividedBy(2 * n + 1);
    sum = sum.plus(term);
  }
  return density(x).times(sum).plus('0.5');
}

describe('normal chance', () => {
  it('is within 1e-15 of the exact one, in the lower tail too', () => {
    for (let z = -10; z <= 10; z += 0.0473) {
      const exact = chance(exactOf(z));
      expect(exactOf(normalChance(z)).minus(exact).abs().dividedBy(exact).toNumber()).toBeLessThan(1e-15);
    }
  });

  it.each([
    [0, 0.5],
    [1.959963984540054, 0.975],
    [-40, 0],
    [40, 1],
  ])('of %d is %d', (z, p) => expect(normalChance(z)).toBeCloseTo(p, 15));
});

describe('normal quantile', () => {
  const shares = [
    ...Array.from({ length: 399 }, (_, k) => (k + 1) / 400),
    ...Array.from({ length: 60 }, (_, k) => 10 ** (-k / 3 - 1)),
  ];

  it('is within 2e-15 of the exact one: its chance is the one asked for', () => {
    for (const p of shares) {
      const z = exactOf(normalQuantile(p));
      const off = chance(z).minus(exactOf(p)).dividedBy(density(z));
      expect(off.abs().toNumber()).toBeLessThanOrEqual(2e-15 * Math.abs(z.toNumber()));
    }
  });

  it('is odd', () => {
    for (const p of [0.25, 0.03125, 2 ** -20]) expect(normalQuantile(1 - p)).toBe(-normalQuantile(p));
  });

  it('is finite next to 0 and 1', () => {
    expect([normalQuantile(2 ** -53), normalQuantile(1 - 2 ** -53)].map((z) => z.toFixed(6))).toEqual([
      '-8.209536',
      '8.209536',
    ]);
  });

  it('knows the 95th percentile', () => expect(decimal(normalQuantile(0.95)).toFixed(14)).toBe('1.64485362695147'));
});
