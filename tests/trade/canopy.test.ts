import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { decimal } from '../../src/core/number';
import {
  crowdedDays,
  daysToSpread,
  keptAfterCrowding,
  massAtDensity,
  touchingSpread,
  yieldAtDensity,
  type Growth,
  type Pattern,
} from '../../src/trade/canopy';

const lettuce: Growth<number> = { first: 3, ratePerDay: 0.2, last: 30 };

/** Spread after some days by the logistic curve, which gives the day of a spread its meaning. */
function spreadAfter({ first, ratePerDay, last }: Growth<number>, days: number): number {
  return last / (1 + (last / first - 1) * Math.exp(-ratePerDay * days));
}

describe('the logistic curve', () => {
  it('starts at the first, ends at the last, and is half of the last where it grows fastest', () => {
    expect(spreadAfter(lettuce, 0)).toBeCloseTo(3, 12);
    expect(spreadAfter(lettuce, 1000)).toBeCloseTo(30, 12);
    // K/(1 + 9 e^(−rt)) = K/2 at t = ln 9 / r.
    expect(spreadAfter(lettuce, Math.log(9) / 0.2)).toBeCloseTo(15, 12);
  });

  it('solves the logistic equation ds/dt = r s (1 − s/K)', () => {
    const step = 1e-5;
    for (const day of [0.5, 5, 11, 20, 40]) {
      const slope = (spreadAfter(lettuce, day + step) - spreadAfter(lettuce, day - step)) / (2 * step);
      const spread = spreadAfter(lettuce, day);
      expect(slope).toBeCloseTo(0.2 * spread * (1 - spread / 30), 8);
    }
  });
});

// econ-S9: GPN, Grower 101: Calculations Part IV: Spacing Containers. Inches; 100 ft² = 14,400 in².
describe('touching', () => {
  it.each<[claim: string, density: number, pattern: Pattern, inches: number, within: number]>([
    ['400 in 100 ft² in a square pattern', 400, 'square', 6, 1e-12],
    ['462 staggered (printed whole)', 462, 'staggered', 6, 0.004],
    ['144 in a square pattern', 144, 'square', 10, 1e-12],
    ['85 staggered (printed whole)', 85, 'staggered', 14, 0.08],
  ])('%s', (_claim, density, pattern, inches, within) => {
    expect(Math.abs(touchingSpread(float, 14_400, density, pattern) - inches)).toBeLessThan(within);
  });

  it('14 inches staggered take 170 in² each (printed whole), and that distance comes back', () => {
    const each = (14 ** 2 * Math.sqrt(3)) / 2;
    expect(Math.round(each)).toBe(170);
    expect(touchingSpread(float, each, 1, 'staggered')).toBeCloseTo(14, 12);
  });

  it('at one distance a staggered pattern carries 2/√3 times as many', () => {
    expect(touchingSpread(float, 8, 21, 'square')).toBeCloseTo(
      touchingSpread(float, 8, (21 * 2) / Math.sqrt(3), 'staggered'),
      12,
    );
  });

  it('half the distance is four times the density: 8 in to 4 in (Currey, Produce Grower)', () => {
    expect(touchingSpread(float, 64, 4, 'square')).toBe(4);
    expect(touchingSpread(float, 64, 1, 'square')).toBe(8);
  });

  it('has no distance without plants', () => expect(touchingSpread(float, 8, 0, 'square')).toBeNaN());
});

describe('the day of a spread', () => {
  it('is the day on which the curve reaches it', () => {
    const growth = fc.record({
      first: fc.double({ min: 0.5, max: 5, noNaN: true }),
      ratePerDay: fc.double({ min: 0.01, max: 1, noNaN: true }),
      last: fc.double({ min: 6, max: 60, noNaN: true }),
    });
    fc.assert(
      fc.property(growth, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (each, part) => {
        const spread = each.first + (each.last - each.first) * part;
        const day = daysToSpread(float, each, spread) ?? NaN;
        expect(day).toBeGreaterThan(0);
        expect(spreadAfter(each, day) / spread).toBeCloseTo(1, 9);
      }),
      { seed: 42, numRuns: 500 },
    );
  }, 60_000);

  it('is exact in exact numbers', () => {
    const exactly = { first: decimal(3), ratePerDay: decimal('0.2'), last: decimal(30) };
    expect(daysToSpread(exact, exactly, decimal(15))?.toNumber()).toBeCloseTo(Math.log(9) / 0.2, 13);
  });

  it.each<[claim: string, growth: Partial<Growth<number>>, spread: number, day: number | undefined]>([
    ['plants that touch at once', {}, 3, 0],
    ['plants that touched before', {}, 2, 0],
    ['plants that never grow so wide', {}, 30, undefined],
    ['plants that only tend to it', {}, 31, undefined],
    ['no first spread', { first: 0 }, 15, NaN],
    ['no growth', { ratePerDay: 0 }, 15, NaN],
    ['a spread that is not known', {}, NaN, NaN],
  ])('%s', (_claim, growth, spread, day) => {
    expect(daysToSpread(float, { ...lettuce, ...growth }, spread)).toEqual(day);
  });
});

describe('crowding', () => {
  it.each([
    [10, 8, 2],
    [10, 10, 0],
    [10, 12, 0],
    [10, undefined, 0],
  ])('%d days, touching on day %s: %d crowded', (stay, touch, crowded) => {
    expect(crowdedDays(float, stay, touch)).toBe(crowded);
  });

  it('each crowded day takes a share of the whole, and no more than all', () => {
    expect([0, 3, 40].map((days) => keptAfterCrowding(float, days, 0.03))).toEqual([1, 0.91, 0]);
  });
});

// Jadhav et al., Horticulturae 11(4):343 (2025): 123 → 680 plants/m² raise the yield by 207 %; the law with
// a/b = 573/m² fits it, and a plant at 680 then has 0.555 of its mass at 123 (both derived in the reference list).
describe('the reciprocal yield law', () => {
  const law = { a: 573, b: 1 };

  it('gives the published rise of yield', () => {
    expect(yieldAtDensity(float, law, 680) / yieldAtDensity(float, law, 123)).toBeCloseTo(3.07, 2);
    expect(massAtDensity(float, law, 680) / massAtDensity(float, law, 123)).toBeCloseTo(0.555, 3);
  });

  it('a plant alone has 1/a; an area tends to 1/b, half of it at density a/b', () => {
    expect(massAtDensity(float, { a: 4, b: 2 }, 0)).toBe(0.25);
    expect(yieldAtDensity(float, { a: 4, b: 2 }, 1e12)).toBeCloseTo(0.5, 9);
    expect(yieldAtDensity(float, { a: 4, b: 2 }, 2)).toBe(0.25);
  });
});
