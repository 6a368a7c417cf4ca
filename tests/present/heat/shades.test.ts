import { describe, expect, it } from 'vitest';
import type { HeatBands } from '../../../src/present/heat/bands';
import { painter, shadeShare, strongest, weakest, type Shades } from '../../../src/present/heat/shades';

const bands: HeatBands = { level: 0, step: 10, first: -2, last: 1 };
const shades: Shades = { paper: [255, 255, 255], better: [255, 0, 0], worse: [0, 0, 255], hatch: [1, 2, 3] };
const hatch = 0xff030201;
const paper = 0xffffffff;

/** The pixels along a row of one result. */
function row(value: number, worse: 'below' | 'above' = 'below'): Set<number> {
  const paint = painter(bands, worse, shades, 1);
  return new Set(Array.from({ length: 14 }, (_, x) => paint(value, x, 0)));
}

describe('a heat picture is painted', () => {
  it('plain on the better side and hatched on the worse one', () => {
    expect(row(5).has(hatch)).toBe(false);
    expect(row(-5).has(hatch)).toBe(true);
    expect(row(5, 'above').has(hatch)).toBe(true);
    expect(row(-5, 'above').has(hatch)).toBe(false);
  });

  it('in one shade a band, the stronger the further from the level', () => {
    const [near] = row(5);
    const [far] = row(15);
    expect([...row(1)]).toEqual([near]);
    // The less green is left of the paper, the stronger the red.
    expect((far! >> 8) & 255).toBeLessThan((near! >> 8) & 255);
    expect(shadeShare(bands, 1)).toBeCloseTo(strongest, 12);
    expect(shadeShare(bands, 0)).toBeGreaterThan(weakest);
  });

  it('with paper and stripes both ways where it cannot be computed', () => {
    const paint = painter(bands, 'below', shades, 1);
    expect(row(NaN)).toEqual(new Set([hatch, paper]));
    expect(row(-Infinity)).toEqual(new Set([hatch, paper]));
    expect(paint(NaN, 3, 3)).toBe(hatch);
    expect(paint(NaN, 3, 4)).toBe(hatch);
    expect(paint(-5, 3, 3)).not.toBe(hatch);
  });
});
