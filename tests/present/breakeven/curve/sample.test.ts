import { describe, expect, it } from 'vitest';
import { merged, places, sample, sharpened, type Point } from '../../../../src/present/breakeven/curve/sample';

const ascending = (xs: readonly number[]): boolean => xs.every((x, i) => i === 0 || x > xs[i - 1]!);

describe('places of a stretch', () => {
  const xs = places({ from: 0, to: 50 }, 80, [12.34, 99]);
  it('ascend, from end to end', () => {
    expect(ascending(xs)).toBe(true);
    expect([xs[0], xs.at(-1)]).toEqual([0, 50]);
  });
  it('hold the given ones that are inside', () => {
    expect(xs).toContain(12.34);
    expect(xs).not.toContain(99);
  });
  it('look closely at what is small', () => expect(xs.filter((x) => x > 0 && x < 0.1).length).toBeGreaterThan(5));
  it('may be below 0', () => expect(places({ from: -10, to: -5 }, 40).every((x) => x <= -5)).toBe(true));
});

it('merged samples hold each place once', () => {
  const at = (...xs: number[]): Point[] => xs.map((x) => ({ x, y: x }));
  expect(merged(at(1, 3, 5), at(1, 2, 5, 6)).map(({ x }) => x)).toEqual([1, 2, 3, 5, 6]);
});

it('what is not finite is a gap', () => {
  expect(sample({ float: (x) => 1 / x }, [0, 1]).map(({ y }) => y)).toEqual([NaN, 1]);
});

describe('a jump', () => {
  const stretch = { from: 0, to: 10 };
  const step = { float: (x: number) => (x < Math.PI ? 0 : 100) };
  const coarse = sample(
    step,
    Array.from({ length: 41 }, (_, k) => k / 4),
  );
  const widthOfRise = (points: readonly Point[]): number => {
    const i = points.findIndex(({ y }) => y === 100);
    return points[i]!.x - points[i - 1]!.x;
  };
  it('is drawn steeper than its samples', () => {
    expect(widthOfRise(coarse)).toBe(0.25);
    expect(widthOfRise(sharpened(step, coarse, stretch, 100))).toBeLessThan(0.01);
  });
  it('is left where it is out of sight', () => {
    expect(sharpened(step, coarse, { from: 5, to: 10 }, 100)).toEqual(coarse);
  });
  it('into what cannot be computed is sharpened too', () => {
    const root = { float: (x: number) => (x < Math.PI ? NaN : 1) };
    const points = sharpened(root, sample(root, [0, 2, 4, 6]), stretch, 100);
    const first = points.find(({ y }) => y === 1)!;
    expect(first.x).toBeGreaterThanOrEqual(Math.PI);
    expect(first.x).toBeLessThan(Math.PI + 0.1);
  });
  it('takes no more places than it may', () => {
    let calls = 0;
    const counted = {
      float: (x: number) => {
        calls += 1;
        return Math.floor(x * 4) * 10;
      },
    };
    const points = sample(
      counted,
      Array.from({ length: 41 }, (_, k) => k / 4),
    );
    calls = 0;
    sharpened(counted, points, stretch, 40);
    expect(calls).toBeLessThanOrEqual(40);
  });
  it('and a smooth line is left as it is', () => {
    const smooth = { float: (x: number) => 3 * x };
    const points = sample(
      smooth,
      Array.from({ length: 101 }, (_, k) => k / 10),
    );
    expect(sharpened(smooth, points, stretch, 100)).toEqual(points);
  });
});
