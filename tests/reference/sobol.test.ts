import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/sobol.json';
import directions from '../../shared/sobolDirections.json';
import { decimal } from '../../src/core/number';
import { distributionOf } from '../../src/study/distribution';
import { sobolIndices, type BlockModel, type SobolIndex } from '../../src/study/sobolIndices';
import { SobolCoordinate } from '../../src/study/sobolSequence';
import { blockOf, evenly } from '../study/blockOf';
import { drain } from '../study/drain';

const replicates = 16;
/*
 * An estimate is the mean of 16 replicates; its deviation in standard errors follows Student's t with 15 degrees of
 * freedom, of which 6 is exceeded about once in 40,000 times (two-sided chance 2.4e-5), over some 80 comparisons here.
 */
const errorsAllowed = 6;

type Inputs = Parameters<typeof sobolIndices>[1];

function indices(model: BlockModel, inputs: Inputs, points: number, seed: number): SobolIndex[] {
  return drain(sobolIndices(model, inputs, { points, replicates, seed }));
}

/** Estimates beside true values, and how large the standard errors are at most. */
function compare(
  found: readonly SobolIndex[],
  first: readonly number[],
  total: readonly number[],
  largestError: number,
) {
  found.forEach((index, i) => {
    expect(Math.abs(index.first - first[i]!)).toBeLessThanOrEqual(errorsAllowed * index.firstError);
    expect(Math.abs(index.total - total[i]!)).toBeLessThanOrEqual(errorsAllowed * index.totalError);
    expect(Math.max(index.firstError, index.totalError)).toBeLessThan(largestError);
  });
}

/*
 * Plain random points would leave a first-order index an error of about √(2/n): 0.016 at 2^13 points, 0.004 at 2^17.
 * Scrambled points must stay below that.
 */
const sizes = [
  [2 ** 13, 0.016],
  [2 ** 17, 0.004],
] as const;

describe.each(sizes)('at 2^m = %d points, errors below %d', { timeout: 60_000 }, (points, largestError) => {
  const { ishigami, mixed, gFunction } = checks;
  const waves = (x: number, y: number, z: number): number =>
    Math.sin(x) + ishigami.a * Math.sin(y) ** 2 + ishigami.b * z ** 4 * Math.sin(x);
  const turn = evenly(-Math.PI, Math.PI);

  it.each([0, 1, 2])('Ishigami, seed %d: the second input acts alone, the third through the first only', (seed) => {
    const found = indices(blockOf(3, waves), [turn, turn, turn], points, seed);
    compare(found, ishigami.first, ishigami.total, largestError);
  });

  it.each([0, 1])('Ishigami with a uniform, a lognormal and a triangular input, seed %d', (seed) => {
    const [low, high] = [-1, 1].map((side) => Math.exp(1 + side * 0.2 * 1.6448536269514722));
    const lognormal = { low: decimal(low!), high: decimal(high!), shape: 'lognormal' } as const;
    const triangular = { low: decimal(0), high: decimal(3), shape: 'triangular' } as const;
    const inputs = [turn, distributionOf(lognormal, decimal(0)), distributionOf(triangular, decimal('1.5'))];
    compare(indices(blockOf(3, waves), inputs, points, seed), mixed.first, mixed.total, largestError);
  });

  it.each(gFunction)('g-function with a = $a', ({ a, first, total }) => {
    const g = (...x: number[]): number => x.reduce((f, v, i) => (f * (Math.abs(4 * v - 2) + a[i]!)) / (1 + a[i]!), 1);
    const inputs = a.map(() => evenly(0, 1));
    const found = indices(blockOf(a.length, g), inputs, points, 1);
    // The printed digits of the first case end after six decimals or seven significant ones.
    const [shortFirst, shortTotal] = [first, total].map((true_) => true_.map((s) => Math.max(5e-7, s * 1e-6)));
    found.forEach((index, i) => {
      const [nearFirst, nearTotal] = [shortFirst![i]!, shortTotal![i]!];
      expect(Math.abs(index.first - first[i]!)).toBeLessThanOrEqual(errorsAllowed * index.firstError + nearFirst);
      expect(Math.abs(index.total - total[i]!)).toBeLessThanOrEqual(errorsAllowed * index.totalError + nearTotal);
      expect(Math.max(index.firstError, index.totalError)).toBeLessThan(largestError);
    });
  });

  it('a linear function of equal parts: each first and total index is one fifth', () => {
    const found = indices(
      blockOf(5, (...x) => x.reduce((sum, one) => sum + one)),
      Array.from({ length: 5 }, () => evenly(0, 1)),
      points,
      7,
    );
    compare(found, Array(5).fill(0.2), Array(5).fill(0.2), largestError);
  });
});

describe("the Sobol' sequence", () => {
  it('begins with the published points, exactly', () => {
    const { firstPoints } = checks;
    const columns = firstPoints[0]!.map((_, dimension) => {
      const column = new Float64Array(firstPoints.length);
      new SobolCoordinate(dimension, 4).fill(column, firstPoints.length, 0);
      return column;
    });
    expect(firstPoints.map((_, i) => columns.map((column) => column[i]))).toEqual(firstPoints);
  });

  it('has directions of the published form: odd m_i below 2^i, polynomials of rising degree, none twice', () => {
    const read = directions.dimensions.map((text) => text.split(' ').map(Number));
    const polynomials = read.map(([a, ...m]) => `${m.length} ${a!}`);
    expect(new Set(polynomials).size).toBe(directions.dimensions.length);
    const degrees = read.map((row) => row.length - 1);
    expect(degrees).toEqual([...degrees].sort((a, b) => a - b));
    read.forEach(([, ...m]) => m.forEach((one, i) => expect([one % 2, one < 2 ** (i + 1)]).toEqual([1, true])));
  });

  it('has primitive polynomials only, which the evenness of each coordinate rests on', () => {
    for (const text of directions.dimensions.slice(0, 100)) {
      const [a = 0, ...m] = text.split(' ').map(Number);
      const degree = m.length;
      const polynomial = (1 << degree) | (a << 1) | 1;
      let state = 1;
      let period = 0;
      do {
        state = state & (1 << (degree - 1)) ? ((state << 1) ^ polynomial) & ((1 << degree) - 1) : state << 1;
        period += 1;
      } while (state !== 1);
      expect([text, period]).toEqual([text, 2 ** degree - 1]);
    }
  });
});
