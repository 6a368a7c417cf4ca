import { describe, expect, it } from 'vitest';
import { sobolIndices, type SobolIndex } from '../../src/study/sobolIndices';
import { designFor, SobolSampler, type SobolDesign } from '../../src/study/sobolSampling';
import { blockOf, evenly } from './blockOf';
import { drain } from './drain';

const design: SobolDesign = { points: 2 ** 12, replicates: 16, seed: 1 };

function indicesOf(inputs: number, f: (...x: number[]) => number, wanted = design, block?: number): SobolIndex[] {
  const unit = Array.from({ length: inputs }, () => evenly(0, 1));
  return drain(sobolIndices(blockOf(inputs, f, block), unit, wanted));
}

describe("Sobol' indices", () => {
  it.each<[claim: string, f: (...x: number[]) => number]>([
    ['a number', () => 5],
    ['0', () => 0],
    ['a number but for rounding', (x) => 0.1 + (x - x) + 1e-18 * x],
  ])('of a constant result are 0, with no error: %s', (_claim, f) => {
    const zero = { first: 0, firstError: 0, total: 0, totalError: 0 };
    expect(indicesOf(2, f)).toEqual([zero, zero]);
  });

  it('do not depend on a constant that is added', () => {
    const f = (x: number, y: number): number => x + x * y;
    const near = indicesOf(2, f);
    indicesOf(2, (x, y) => f(x, y) + 1e6).forEach((index, i) => {
      expect(index.first).toBeCloseTo(near[i]!.first, 7);
      expect(index.total).toBeCloseTo(near[i]!.total, 7);
    });
  });

  it('of an input without effect are exactly 0', () => {
    const [, idle] = indicesOf(2, (x) => x);
    expect([idle!.first, idle!.total]).toEqual([0, 0].map((zero) => expect.closeTo(zero, 15) as unknown));
  });

  it('of the only input with effect are 1', () => {
    const [only] = indicesOf(2, (x) => Math.exp(x));
    expect(only!.total).toBeCloseTo(1, 2);
    expect(Math.abs(only!.first - 1)).toBeLessThan(5 * only!.firstError);
  });

  it('repeat with their seed; 0 is a seed', () => {
    const f = (x: number, y: number): number => x * y;
    const at = (seed: number): SobolIndex[] => indicesOf(2, f, { ...design, seed });
    expect(at(0)).toEqual(at(0));
    expect(at(0)).not.toEqual(at(1));
  });

  it('do not depend on the block, but for the order of sums', () => {
    const f = (x: number, y: number): number => x * y;
    const [large, small] = [256, 32].map((block) => indicesOf(2, f, design, block));
    large!.forEach((index, i) => expect(index.first).toBeCloseTo(small![i]!.first, 12));
  });

  it('leave out points in which the result is not known', () => {
    const whole = indicesOf(2, (x, y) => x + 2 * y);
    const parts = indicesOf(2, (x, y) => (Math.abs(x - y) < 0.001 ? NaN : x + 2 * y));
    parts.forEach((index, i) => expect(index.total).toBeCloseTo(whole[i]!.total, 1));
  });

  it('of a result that is never known are not known', () => {
    const [index] = indicesOf(1, () => NaN);
    expect([index!.first, index!.total]).toEqual([NaN, NaN]);
  });

  it('go beyond the last coordinate of the sequence with plain random numbers', () => {
    const found = indicesOf(130, (...x) => x[0]! + x[129]!, { ...design, points: 2 ** 10 });
    for (const i of [0, 129]) expect(Math.abs(found[i]!.total - 0.5)).toBeLessThan(5 * found[i]!.totalError);
    expect(found[60]!.total).toBe(0);
  });

  it('of no inputs are none', () => expect(indicesOf(0, () => 1)).toEqual([]));

  it('say how far they have come', () => {
    const steps = sobolIndices(
      blockOf(1, (x) => x),
      [evenly(0, 1)],
      design,
    );
    const shares = [...steps];
    expect(shares.at(-1)).toBe(1);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
  });
});

describe('the errors', () => {
  it('are standard errors: over 60 seeds, estimates scatter as much as is said', () => {
    const runs = Array.from({ length: 60 }, (_, seed) => {
      return indicesOf(2, (x, y) => x + x * y, { points: 2 ** 9, replicates: 16, seed })[0]!;
    });
    const mean = runs.reduce((sum, { total }) => sum + total, 0) / runs.length;
    const scatter = Math.sqrt(runs.reduce((sum, { total }) => sum + (total - mean) ** 2, 0) / (runs.length - 1));
    const said = Math.sqrt(runs.reduce((sum, { totalError }) => sum + totalError ** 2, 0) / runs.length);
    // The ratio of two such estimates lies between 0.7 and 1.4 but for one in some hundred.
    expect([scatter / said > 0.7, scatter / said < 1.4]).toEqual([true, true]);
  });
});

describe('the design', () => {
  it.each([
    [1, 512],
    [1000, 512],
    [100_000, 8192],
    [10_000_000, 65_536],
  ])('for %d draws has %d points', (draws, points) => {
    expect(designFor(draws, 3)).toEqual({ points, replicates: 16, seed: 3 });
  });

  it('gives A and B columns of their own, all between 0 and 1', () => {
    const sampler = new SobolSampler([evenly(0, 1), evenly(0, 1)], design, 0);
    const [a, b] = [0, 1].map(() => [new Float64Array(64), new Float64Array(64)]);
    sampler.fill(a!, b!, 64);
    const columns = [...a!, ...b!];
    expect(new Set(columns.map((column) => column.join())).size).toBe(4);
    expect(columns.every((column) => column.every((x) => x > 0 && x < 1))).toBe(true);
  });

  it('scrambles each replicate on its own', () => {
    const firsts = [0, 1, 2].map((replicate) => {
      const column = [new Float64Array(1)];
      new SobolSampler([evenly(0, 1)], design, replicate).fill(column, [new Float64Array(1)], 1);
      return column[0]![0];
    });
    expect(new Set(firsts).size).toBe(3);
  });
});
