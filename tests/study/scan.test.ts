import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { placeAt, placesIn, scanCurve } from '../../src/study/scan';

function exactly(from: string, to: string, given: readonly string[] = []) {
  const places = placesIn({ from: decimal(from), to: decimal(to) }, given.map(decimal));
  return places.near.map((_, i) => placeAt(places, i));
}

function places(from: string, to: string, given: readonly string[] = []): number[] {
  return exactly(from, to, given).map((x) => x.toNumber());
}

describe('the places looked at', () => {
  it.each([
    ['from 0', '0', '10'],
    ['above 0', '3', '400'],
    ['below 0', '-400', '-3'],
    ['across 0', '-1000', '0.0001'],
    ['over many decades', '1e-10', '1e10'],
    ['close together', '1', '1.0000001'],
  ])('%s are at least 2,000, ascending, each once, from end to end', (_claim, from, to) => {
    const xs = exactly(from, to);
    expect(xs.length).toBeGreaterThanOrEqual(2000);
    expect([xs[0]?.eq(from), xs.at(-1)?.eq(to)]).toEqual([true, true]);
    expect(xs.every((x, i) => i === 0 || x.gt(xs[i - 1]!))).toBe(true);
  });

  it.each([
    ['from 0', '0', '10'],
    ['across 0', '-5', '10'],
    ['far from 0', '1000', '1010'],
  ])('%s lie evenly: no gap wider than a thousandth', (_claim, from, to) => {
    const xs = places(from, to);
    const widest = Math.max(...xs.slice(1).map((x, i) => x - xs[i]!));
    expect(widest).toBeLessThanOrEqual(((Number(to) - Number(from)) / 1000) * (1 + 1e-9));
  });

  it.each([
    ['above 0', '1e-6', '1', 1],
    ['from 0, over eight decades', '0', '10', 1],
    ['below 0', '-1', '-1e-6', -1],
    ['across 0, on both sides', '-1000', '1000', 1],
    ['across 0, on both sides', '-1000', '1000', -1],
    ['across 0, far less on one side', '-1000', '0.0001', 1],
  ])('%s lie by ratio too: each within 5 %% of the next', (_claim, from, to, sign) => {
    const xs = places(from, to)
      .map((x) => x * sign)
      .filter((x) => x > 0)
      .sort((a, b) => a - b);
    const largest = xs.at(-1)!;
    const within = xs.filter((x) => x >= largest * 1.1e-8);
    expect(largest / within[0]!).toBeGreaterThan(1e5);
    expect(Math.max(...within.slice(1).map((x, i) => x / within[i]!))).toBeLessThan(1.05);
  });

  it('hold both ends and the given ones in all their digits', () => {
    const [from, given, to] = ['0.1000000000000000000001', '1.23456789012345678901', '3.00000000000000000000009'];
    const xs = exactly(from, to, [given]).map(String);
    expect([xs[0], xs.includes(given), xs.at(-1)]).toEqual([from, true, to]);
  });

  it('lie at numbers that people would write', () => {
    // 0.1 + 0.2 in float64 is 0.30000000000000004.
    expect(places('0.1', '0.3')).toContain(0.2);
    expect(places('0', '0.7').filter((x) => x !== Number(x.toPrecision(15)))).toEqual([]);
  });

  it('hold the given ones inside the range, once', () => {
    const xs = places('0', '10', ['3.33333', '3.33333', '11', '-1', '10']);
    expect([xs.filter((x) => x === 3.33333).length, xs.includes(11), xs.includes(-1)]).toEqual([1, false, false]);
  });
});

describe('a scan', () => {
  const curve = { exact: (x: ReturnType<typeof decimal>) => x, float: (x: number) => (x > 5 ? NaN : x * 2) };
  const found = scanCurve(curve, { from: decimal(0), to: decimal(10) }, 3, [decimal(4)]);

  it('has the height above the target at each place, NaN where there is none', () => {
    const at = (x: number) => found.heights[found.places.near.indexOf(x)];
    expect([0, 4, 5, 6, 10].map(at)).toEqual([-3, 5, 7, NaN, NaN]);
  });

  it('knows the largest height, whatever cannot be computed', () => {
    expect(found.largest).toBe(7);
  });

  it('of nothing has none', () => {
    const none = scanCurve({ ...curve, float: () => NaN }, { from: decimal(0), to: decimal(1) }, 0, []);
    expect(none.largest).toBe(0);
  });
});
