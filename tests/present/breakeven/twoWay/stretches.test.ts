import { describe, expect, it } from 'vitest';
import { stretchesAbove } from '../../../../src/present/breakeven/twoWay/stretches';

function found(at: (x: number) => number, level = 0): string {
  const all = stretchesAbove(at, { from: 0, to: 10 }, level);
  return all.map(({ from, to }) => [from, to].map((x) => Number(x.toPrecision(10))).join(' to ')).join(', ');
}

describe('stretches at or above a level', () => {
  it.each<[claim: string, at: (x: number) => number, stretches: string]>([
    ['up to where it falls below', (x) => 3 - x, '0 to 3'],
    ['from where it reaches it', (x) => x - 3, '3 to 10'],
    ['between two crossings', (x) => (x - 2) * (5 - x), '2 to 5'],
    ['outside of them', (x) => (x - 2) * (x - 5), '0 to 2, 5 to 10'],
    ['all of it', () => 0, '0 to 10'],
    ['none of it', () => -1, ''],
    ['up to a jump', (x) => (x > 4 ? -1 : 1), '0 to 4'],
    ['not where it cannot be computed', (x) => (x > 2 && x < 6 ? NaN : 1), '0 to 2, 6 to 10'],
    ['nowhere where nothing can be computed', () => NaN, ''],
  ])('%s', (_claim, at, stretches) => expect(found(at)).toBe(stretches));

  it('of another level', () => expect(found((x) => x, 7.25)).toBe('7.25 to 10'));
});
