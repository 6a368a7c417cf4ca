import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/core/number';
import { BetaQuantile } from '../../src/study/betaQuantile';

const Wide = Decimal.clone({ precision: 45 });

function exactOf(x: number): Decimal {
  return new Wide(x.toPrecision(100));
}

/** ∫₀ˣ t^(a-1) (1-t)^(b-1) dt by a series of positive terms (Abramowitz & Stegun 26.5.4). */
function mass(x: Decimal, a: Decimal, b: Decimal): Decimal {
  let sum = new Wide(0);
  let term = new Wide(1);
  for (let n = 0; term.gt('1e-42'); n += 1) {
    sum = sum.plus(term);
    term = term.times(x).times(a.plus(b).plus(n)).dividedBy(a.plus(1).plus(n));
  }
  return x.pow(a).times(new Wide(1).minus(x).pow(b)).dividedBy(a).times(sum);
}

/** How far a quantile lies from the exact one. */
function off(a: number, b: number, p: number, x: number): number {
  const [wideA, wideB] = [exactOf(a), exactOf(b)];
  const middle = wideA.dividedBy(wideA.plus(wideB));
  const upperShare = mass(new Wide(1).minus(middle), wideB, wideA);
  const whole = mass(middle, wideA, wideB).plus(upperShare);
  const at = exactOf(x);
  const rest = new Wide(1).minus(at);
  const density = at
    .pow(wideA.minus(1))
    .times(rest.pow(wideB.minus(1)))
    .dividedBy(whole);
  const isLow = at.lt(middle);
  const below = isLow
    ? mass(at, wideA, wideB).dividedBy(whole)
    : new Wide(1).minus(mass(rest, wideB, wideA).dividedBy(whole));
  return below.minus(exactOf(p)).abs().dividedBy(density).toNumber();
}

const shapes = [1, 1.001, 1.5, 1.8, 2.5, 3, 3.9, 4.7, 5];

describe('quantiles of the beta distribution with shapes that sum to 6', () => {
  it.each(shapes)('a = %d: within 1e-12', (a) => {
    const beta = new BetaQuantile(a, 6 - a);
    for (let k = 1; k < 80; k += 1) expect(off(a, 6 - a, k / 80, beta.at(k / 80))).toBeLessThan(1e-12);
  });

  it.each(shapes)('a = %d: far down, within 1e-12 of the distance from the end', (a) => {
    const beta = new BetaQuantile(a, 6 - a);
    for (const p of [1e-3, 1e-6, 1e-10, 2 ** -53]) {
      const x = beta.at(p);
      expect(off(a, 6 - a, p, x) / x).toBeLessThan(1e-12);
    }
  });

  it.each(shapes)('a = %d: rising, within 0..1, the mirror image of 6 - a', (a) => {
    const [beta, mirrored] = [new BetaQuantile(a, 6 - a), new BetaQuantile(6 - a, a)];
    const found = Array.from({ length: 999 }, (_, k) => beta.at((k + 1) / 1000));
    expect(found.every((x, k) => x > 0 && x < 1 && (k === 0 || x > found[k - 1]!))).toBe(true);
    found.forEach((x, k) => expect(x + mirrored.at(1 - (k + 1) / 1000)).toBeCloseTo(1, 12));
  });

  it('a = 1: 1 - (1 - p)^(1/5)', () => {
    const beta = new BetaQuantile(1, 5);
    for (const p of [0.1, 0.5, 0.9]) expect(beta.at(p)).toBeCloseTo(1 - (1 - p) ** 0.2, 13);
  });

  it('other sums than 6 as well: the arcsine shape (1.5, 1.5) at one half', () => {
    expect(new BetaQuantile(1.5, 1.5).at(0.5)).toBeCloseTo(0.5, 13);
  });
});
