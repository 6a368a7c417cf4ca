import { cumulativeStdNormalProbability } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/distributions.json';
import { decimal } from '../../src/core/number';
import type { Shape } from '../../src/model/cell';
import { distributionOf, type Distribution } from '../../src/study/distribution';

const z95 = 1.6448536269514722;

function range(shape: Shape, low: number, high: number, mode = low): Distribution {
  return distributionOf({ low: decimal(low), high: decimal(high), shape }, decimal(mode));
}

/** Within some units of the last place of a double, or of the digits that are printed. */
function expectNear(value: number, printed: string | number, relative: number): void {
  expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(relative * Math.max(Math.abs(Number(printed)), 1e-300));
}

describe('triangular', () => {
  const cases = checks.triangular.map((one) => [`${one.low}, ${one.mode}, ${one.high}`, one] as const);

  it.each(cases)('%s', (_name, { low, mode, high, variance, median, below, quantiles }) => {
    const found = range('triangular', low, high, mode);
    expect(Math.abs(found.mean - (low + mode + high) / 3)).toBeLessThanOrEqual(1e-15 * Math.max(-low, high));
    if (variance) expectNear(found.variance, variance[0]! / variance[1]!, 1e-15);
    if (median !== undefined) expectNear(found.quantile(0.5), median, 1e-14);
    for (const [x, chance] of below ?? []) expect(found.quantile(Number(chance))).toBeCloseTo(Number(x), 13);
    for (const [share, x] of quantiles ?? []) expectNear(found.quantile(Number(share)), x!, 1e-11);
  });
});

describe('PERT', () => {
  const [one] = checks.pert;
  const found = range('pert', one!.low, one!.high, one!.mode);

  it('mean and exact variance', () => {
    expectNear(found.mean, one!.mean, 1e-15);
    expectNear(found.variance, one!.variance, 1e-15);
  });

  it('the variance is not the simplified one', () => {
    expect(Math.abs(found.variance - Number(one!.simplified))).toBeGreaterThan(0.2);
  });

  it('a mode in the middle: span²/28, not span²/36', () => {
    expectNear(range('pert', 0, 1, 0.5).variance, 1 / 28, 1e-15);
  });

  it.each(one!.quantiles)('quantile %d: %s', (share, x) => expectNear(found.quantile(Number(share)), x, 1e-11));
});

describe('lognormal', () => {
  const cases = checks.lognormal.map((one) => [`mu ${one.mu}, sigma ${one.sigma}`, one] as const);

  it.each(cases)('%s', (_name, { mu, sigma, mean, variance, upper }) => {
    const found = range('lognormal', Math.exp(mu - z95 * sigma), Math.exp(mu + z95 * sigma));
    if (mean !== undefined) expectNear(found.mean, mean, 1e-14);
    if (variance !== undefined) expectNear(found.variance, variance, 1e-13);
    // 1 - 2e-10 is held to 1e-16 only, so that far out the quantile can have no more than 7 digits.
    for (const [above, x] of upper ?? [])
      expectNear(found.quantile(1 - Number(above)), x!, above === 0.1 ? 1e-14 : 1e-7);
  });
});

describe('normal', () => {
  const [one] = checks.normal;
  const found = range('normal', one!.low, one!.high);

  it('mean and variance', () => {
    expectNear(found.mean, 0, 0);
    expectNear(found.variance, 1, 1e-15);
  });

  it.each(one!.quantiles)('quantile %d: %s', (share, x) => expectNear(found.quantile(Number(share)), x, 1e-15));

  it('an independent library gives back the chance, to the digits of its table', () => {
    for (let share = 0.01; share < 1; share += 0.01) {
      const z = Math.round(found.quantile(share) * 100) / 100;
      expect(cumulativeStdNormalProbability(z)).toBeCloseTo(chanceBelow(found, z), 4);
    }
  });
});

/** The chance below a value, from the quantile function by halving. */
function chanceBelow(distribution: Distribution, value: number): number {
  let [low, high] = [0, 1];
  for (let turn = 0; turn < 50; turn += 1) {
    const middle = (low + high) / 2;
    if (distribution.quantile(middle) < value) low = middle;
    else high = middle;
  }
  return low;
}
