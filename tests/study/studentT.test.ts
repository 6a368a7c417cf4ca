import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../src/study/normal';
import { halfWidths, studentQuantile } from '../../src/study/studentT';

const chances = [0.49, 0.4, 0.25, 0.1, 0.05, 0.025, 0.005, 1e-4, 1e-7];
const off = (found: number, exact: number): number => Math.abs(found / exact - 1);

/** The chance above t by Simpson's rule, with the density's scale from the same rule: no function of ours in it. */
function above(t: number, freedom: number): number {
  const bend = (angle: number): number => Math.cos(angle) ** (freedom - 1);
  const area = (from: number, to: number): number => {
    const parts = 20_000;
    const width = (to - from) / parts;
    let sum = bend(from) + bend(to);
    for (let k = 1; k < parts; k += 1) sum += (k % 2 === 1 ? 4 : 2) * bend(from + k * width);
    return (sum * width) / 3;
  };
  const start = Math.atan(t / Math.sqrt(freedom));
  return area(start, Math.PI / 2) / (2 * area(0, Math.PI / 2));
}

describe('quantiles of Student’s t', () => {
  it('with 1 degree of freedom are those of Cauchy: cot πp', () => {
    for (const p of chances) expect(off(studentQuantile(p, 1), 1 / Math.tan(Math.PI * p))).toBeLessThan(1e-12);
  });

  it('with 2 are (1 − 2p)/√(2p(1 − p))', () => {
    for (const p of chances) {
      expect(off(studentQuantile(p, 2), (1 - 2 * p) / Math.sqrt(2 * p * (1 - p)))).toBeLessThan(1e-12);
    }
  });

  it('with 4 are 2√(cos(⅓ arccos √a)/√a − 1), a = 4p(1 − p)', () => {
    for (const p of chances.slice(1, 7)) {
      const root = Math.sqrt(4 * p * (1 - p));
      expect(off(studentQuantile(p, 4), 2 * Math.sqrt(Math.cos(Math.acos(root) / 3) / root - 1))).toBeLessThan(1e-12);
    }
  });

  it.each([3, 5, 8, 17, 40, 193, 2.5, 5.75, 17.776, 63.4])(
    'with %d leave the chance above them, by quadrature',
    (freedom) => {
      for (const p of chances.slice(0, 7)) {
        expect(off(above(studentQuantile(p, freedom), freedom), p)).toBeLessThan(1e-10);
      }
    },
  );

  // mpmath 1.3, incomplete beta function solved to 40 digits.
  it.each([
    [0.025, 9, 2.2621571627982055],
    [0.025, 194, 1.9722675325821355],
    [0.25, 7, 0.7111417780817863],
    [0.025, 29, 2.0452296421327043],
    [0.005, 20_000, 2.576075153017255],
    [0.025, 20_000, 1.9600826051581352],
    [0.25, 20_000, 0.6745020171411137],
  ])('above %d with %d: %d', (p, freedom, exact) =>
    expect(off(studentQuantile(p, freedom), exact)).toBeLessThan(2e-13),
  );

  it('come to those of the normal distribution from above', () => {
    for (const p of chances) {
      const z = -normalQuantile(p);
      const found = [2, 10, 100, 1_000, 20_000].map((freedom) => studentQuantile(p, freedom));
      expect(found.every((t, i) => t > z && (i === 0 || t < found[i - 1]!))).toBe(true);
      // The first term of the series in 1/n (Abramowitz & Stegun 26.7.5); the next is about z⁵/(20n²).
      expect(off(found[4]!, z + (z ** 3 + z) / (4 * 20_000))).toBeLessThan(1e-6);
    }
  });

  it('rise as the chance falls, without a jump where the method changes', () => {
    for (const freedom of [1, 6, 90, 5_000]) {
      const found = Array.from({ length: 499 }, (_, k) => studentQuantile(0.5 - (k + 1) / 1000, freedom));
      expect(found.every((t, k) => t > (found[k - 1] ?? 0))).toBe(true);
    }
  });

  it('are 0 for one half', () => expect(studentQuantile(0.5, 3)).toBe(0));
});

describe('half-widths', () => {
  it('share what is outside between both ends', () => {
    const { z, t } = halfWidths(0.05);
    expect(z).toBeCloseTo(1.959963984540054, 14);
    expect(t(10)).toBe(studentQuantile(0.025, 10));
  });

  it('are as good far out', () => {
    expect(off(halfWidths(1e-20).z, 9.33604484923406)).toBeLessThan(1e-14);
    expect(off(halfWidths(1e-20).t(1), 2 / (Math.PI * 1e-20))).toBeLessThan(1e-12);
  });
});
