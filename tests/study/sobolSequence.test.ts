import { describe, expect, it } from 'vitest';
import { randomStream } from '../../src/study/rng';
import { directionNumbers, SobolCoordinate, sobolDimensions } from '../../src/study/sobolSequence';

const bits = 8;
const points = 2 ** bits;

function coordinate(dimension: number, seed?: number): Float64Array {
  const column = new Float64Array(points);
  new SobolCoordinate(dimension, bits, seed === undefined ? undefined : randomStream(seed, 0)).fill(
    column,
    points,
    0.5,
  );
  return column;
}

describe("the Sobol' sequence", () => {
  it('has coordinates for 60 inputs twice over, and more', () => expect(sobolDimensions).toBe(256));

  it('has one point in each of 2^m equal parts of every coordinate', () => {
    for (let dimension = 0; dimension < sobolDimensions; dimension += 1) {
      const parts = new Set(Array.from(coordinate(dimension), (x) => Math.floor(x * points)));
      expect([dimension, parts.size]).toEqual([dimension, points]);
    }
  });

  it('goes on from fill to fill', () => {
    const [whole, parts] = [new Float64Array(8), new Float64Array(8)];
    new SobolCoordinate(5, 3).fill(whole, 8, 0);
    const one = new SobolCoordinate(5, 3);
    one.fill(parts.subarray(0, 3), 3, 0);
    one.fill(parts.subarray(3), 5, 0);
    expect(parts).toEqual(whole);
  });

  it('has the direction numbers of van der Corput in its first coordinate', () => {
    expect([...directionNumbers(0, 3)]).toEqual([2 ** 31, 2 ** 30, 2 ** 29]);
  });
});

describe('scrambling', () => {
  it('keeps one point in each of 2^m equal parts', () => {
    for (const dimension of [0, 1, 7, 100, 255]) {
      for (const seed of [0, 1, 2]) {
        expect(new Set(Array.from(coordinate(dimension, seed), (x) => Math.floor(x * points))).size).toBe(points);
      }
    }
  });

  it('keeps the boxes of two coordinates filled alike: 16 by 16 boxes, one point each', () => {
    const random = randomStream(4, 0);
    const [a, b] = [0, 1].map((dimension) => {
      const column = new Float64Array(points);
      new SobolCoordinate(dimension, bits, random).fill(column, points, 0.5);
      return column;
    });
    expect(new Set(Array.from(a!, (x, i) => `${Math.floor(x * 16)} ${Math.floor(b![i]! * 16)}`)).size).toBe(points);
  });

  it('repeats with its seed, and differs with it; 0 is a seed', () => {
    expect(coordinate(3, 0)).toEqual(coordinate(3, 0));
    expect(coordinate(3, 0)).not.toEqual(coordinate(3, 1));
    expect(coordinate(3, 0)).not.toEqual(coordinate(3));
  });

  it('spreads each point evenly over 0..1', () => {
    const counts = new Array<number>(10).fill(0);
    for (let seed = 0; seed < 2000; seed += 1) {
      const column = new Float64Array(3);
      new SobolCoordinate(6, 2, randomStream(seed, 1)).fill(column, 3, 0.5);
      counts[Math.floor(column[2]! * 10)]! += 1;
    }
    const chi = counts.reduce((sum, count) => sum + (count - 200) ** 2 / 200, 0);
    // Chi square with 9 degrees of freedom exceeds 33.7 once in 10,000.
    expect(chi).toBeLessThan(33.7);
  });

  it('keeps points off 0 and 1', () => {
    const column = coordinate(0);
    expect([Math.min(...column) > 0, Math.max(...column) < 1]).toEqual([true, true]);
  });
});
