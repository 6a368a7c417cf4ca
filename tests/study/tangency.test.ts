import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { tangencies } from '../../src/study/tangency';

/** Touches and changes of side that a closer look finds between whole numbers from 0 to 10. */
function look(height: (x: Decimal) => Decimal) {
  const near = Array.from({ length: 11 }, (_, x) => x);
  const quick = (x: number): number => height(decimal(x)).toNumber();
  const place = (i: number) => ({ x: decimal(i), y: height(decimal(i)) });
  const found = tangencies({ near, heights: near.map(quick), place, isAtTarget: false }, { exact: height, quick });
  return {
    touching: found.touching.map((x) => x.toNumber()),
    changes: found.changes.map(([from, to]) => [from.x.toNumber(), to.x.toNumber()]),
  };
}

const from = (place: string) => (x: Decimal) => x.minus(place);

describe('a touch is seen', () => {
  it.each<[claim: string, height: (x: Decimal) => Decimal, at: number]>([
    ['between places, from above', (x) => from('4.3')(x).pow(2), 4.3],
    ['between places, from below', (x) => from('4.3')(x).pow(2).negated(), 4.3],
    ['at a place, from above', (x) => from('4')(x).pow(2), 4],
    ['next to the first place', (x) => from('0.2')(x).pow(2), 0.2],
    ['next to the last place', (x) => from('9.8')(x).pow(2), 9.8],
    ['very flat', (x) => from('4.3')(x).pow(8), 4.3],
    ['in a corner between places', (x) => from('4.3')(x).abs(), 4.3],
    ['in a corner at a place', (x) => from('4')(x).abs(), 4],
  ])('%s', (_claim, height, at) => {
    const { touching, changes } = look(height);
    expect(changes).toEqual([]);
    expect(touching).toHaveLength(1);
    expect(Math.abs(touching[0]! - at)).toBeLessThan(1e-12);
  });
});

describe('a change of side between two places of one side is seen', () => {
  it.each([
    ['a dip below', 1],
    ['a peak above', -1],
  ])('%s', (_claim, sign) => {
    const { touching, changes } = look((x) => from('4.3')(x).pow(2).minus('0.01').times(sign));
    expect(touching).toEqual([]);
    const [down, up] = changes as [[number, number], [number, number]];
    expect([down[0], up[1]]).toEqual([3, 5]);
    expect(down[1]).toBe(up[0]);
    expect(Math.abs(down[1] - 4.3)).toBeLessThanOrEqual(0.1);
  });
});

describe('nothing is seen', () => {
  it.each<[claim: string, height: (x: Decimal) => Decimal]>([
    ['in a dip that stays away from the target', (x) => from('4.3')(x).pow(2).plus('0.0001')],
    ['in a dip that stays very little away', (x) => from('4.3')(x).pow(2).plus('1e-15')],
    ['in a rising line', (x) => x.plus(1)],
    ['at a crossing', from('4.3')],
    ['at a plateau at the target', (x) => (x.gt(5) ? x.minus(5) : decimal(0))],
    ['at a plateau above it', () => decimal(1)],
    ['beside what cannot be computed', (x) => (x.gt(5) ? decimal(NaN) : from('5')(x).pow(2))],
  ])('%s', (_claim, height) => {
    expect(look(height)).toEqual({ touching: [], changes: [] });
  });
});
