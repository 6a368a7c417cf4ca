import { describe, expect, it } from 'vitest';
import { orthogonalFit } from '../../src/study/orthogonalFit';
import { normalQuantile } from '../../src/study/normal';
import { randomStream } from '../../src/study/rng';

const xs = Float64Array.from({ length: 50 }, (_, i) => i / 25 - 0.98);
const ones = xs.map(() => 1);

function expectClose(fit: Float64Array, wanted: Float64Array, digits: number): void {
  fit.forEach((value, i) => expect(value).toBeCloseTo(wanted[i]!, digits));
}

describe('a polynomial through points', () => {
  it.each<[claim: string, f: (x: number) => number]>([
    ['a constant', () => 3],
    ['a line', (x) => 1 - 2 * x],
    ['a cubic', (x) => x ** 3 - x],
    ['degree 8', (x) => x ** 8 - 0.5 * x ** 3],
  ])('without noise is the one they lie on: %s', (_claim, f) => {
    expectClose(orthogonalFit(xs, xs.map(f), ones, 0, 8), xs.map(f), 12);
  });

  it('is the least-squares line where degree 1 is the highest tried', () => {
    const ys = xs.map((x) => x * x);
    const mean = ys.reduce((sum, y) => sum + y, 0) / ys.length;
    expectClose(
      orthogonalFit(xs, ys, ones, 0, 1),
      xs.map(() => mean),
      12,
    );
  });

  it('leaves points of no weight out', () => {
    const weights = ones.map((_, i) => (i % 5 === 0 ? 0 : 1));
    const ys = xs.map((x, i) => (i % 5 === 0 ? 1e6 : 2 * x));
    expectClose(
      orthogonalFit(xs, ys, weights, 0, 8),
      xs.map((x) => 2 * x),
      9,
    );
  });

  it('of one point is that point', () => {
    const weights = ones.map((_, i) => (i === 7 ? 4 : 0));
    expectClose(
      orthogonalFit(
        xs,
        xs.map(() => 5),
        weights,
        1,
        8,
      ),
      xs.map(() => 5),
      12,
    );
  });

  it('does not follow noise: a mean of pure noise is mostly taken for a constant', () => {
    const stream = randomStream(1, 0);
    const noise = new Float64Array(xs.length);
    let constant = 0;
    for (let turn = 0; turn < 200; turn += 1) {
      stream.fill(noise, noise.length);
      const fit = orthogonalFit(xs, noise.map(normalQuantile), ones, 1, 8);
      if (fit.every((value) => Math.abs(value - fit[0]!) < 1e-9)) constant += 1;
    }
    // Each further degree passes with the chance that a squared normal exceeds 2, 16 %.
    expect(constant).toBeGreaterThan(100);
  });
});
