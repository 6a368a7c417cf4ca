import fc from 'fast-check';
import { describe as group, expect, it } from 'vitest';
import { describe, halved, plain, raised, same, times, type Dimension } from '../../src/core/dimension';

const kinds = ['s', 'day', 'year', 'm', 'EUR', 'plant'];
const dimensions = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...kinds), fc.integer({ min: -3, max: 3 })), { selector: ([kind]) => kind })
  .map((powers): Dimension => new Map(powers.filter(([, n]) => n !== 0)));

const of = (powers: Record<string, number>): Dimension => new Map(Object.entries(powers));

group('a dimension in words', () => {
  it.each<[powers: Record<string, number>, words: string]>([
    [{}, 'a plain number'],
    [{ EUR: 1 }, 'EUR'],
    [{ EUR: 1, plant: -1 }, 'EUR/plant'],
    [{ year: -1 }, '1/year'],
    [{ m: 2 }, 'm^2'],
    [{ EUR: 1, m: -2, year: -1 }, 'EUR/m^2/year'],
    [{ W: 1, s: 1 }, 'W*s'],
  ])('%j is %s', (powers, words) => expect(describe(of(powers))).toBe(words));
});

group('dimensions', () => {
  it('lose a kind whose power is 0', () => {
    expect(times(of({ EUR: 1, plant: -1 }), of({ plant: 1 })).size).toBe(1);
    expect(raised(of({ m: 2 }), 0).size).toBe(0);
  });

  it('multiply and divide back', () => {
    fc.assert(
      fc.property(dimensions, dimensions, (a, b) => {
        expect(same(times(times(a, b), b, -1), a)).toBe(true);
        expect(same(times(a, b), times(b, a))).toBe(true);
      }),
      { seed: 1 },
    );
  });

  it('halve what was squared', () => {
    fc.assert(
      fc.property(dimensions, (a) => {
        expect(halved(raised(a, 2))).toEqual(a);
      }),
      { seed: 1 },
    );
  });

  it.each<[powers: Record<string, number>]>([[{ m: 1 }], [{ m: 2, EUR: 1 }], [{ s: -3 }]])('%j has no half', (powers) =>
    expect(halved(of(powers))).toBeUndefined(),
  );

  it.each<[claim: string, a: Dimension, b: Dimension, alike: boolean]>([
    ['order of kinds is free', of({ EUR: 1, plant: -1 }), of({ plant: -1, EUR: 1 }), true],
    ['powers count', of({ m: 1 }), of({ m: 2 }), false],
    ['one kind more', of({ m: 1 }), of({ m: 1, s: 1 }), false],
    ['other kinds', of({ m: 1 }), of({ s: 1 }), false],
    ['plain is plain', plain, of({}), true],
  ])('are the same or not: %s', (_claim, a, b, alike) => expect(same(a, b)).toBe(alike));
});
