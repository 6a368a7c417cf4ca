import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { scanCloser } from '../../src/study/closerScan';
import { scanCurve } from '../../src/study/scan';

const range = { from: decimal(0), to: decimal(10) };

/** A curve over 0 to 10 looked at closer; `counted` tells how often it was computed exactly. */
function look(exact: (x: Decimal) => Decimal, float = (x: number) => exact(decimal(x)).toNumber()) {
  let count = 0;
  const counted = (x: Decimal): Decimal => {
    count += 1;
    return exact(x);
  };
  const looked = scanCloser(scanCurve({ exact, float }, range, 0, []), counted, 10);
  return { ...looked, at: (x: number) => looked.heights[looked.near.indexOf(x)], count: () => count };
}

describe('a place is computed exactly', () => {
  it('where float64 cannot compute it', () => {
    expect(
      look(
        (x) => x.plus(1),
        (x) => (x === 5 ? NaN : x + 1),
      ).at(5),
    ).toBe(6);
  });

  it('where float64 comes to 0 and the height does not', () => {
    const { at } = look(
      (x) => x.minus(5).plus('1e-400'),
      (x) => x - 5,
    );
    expect(at(5)).toBeGreaterThan(0);
    expect(
      look(
        (x) => x.minus(5).minus('1e-400'),
        (x) => x - 5,
      ).at(5),
    ).toBeLessThan(0);
  });

  it('beside a change of side, and hardly anywhere else', () => {
    const { count } = look((x) => x.minus('4.999'));
    expect([count() >= 2, count() <= 6]).toEqual([true, true]);
  });

  it('once only', () => {
    const { place, count } = look((x) => x.plus(1));
    expect([place(3).y, place(3)]).toEqual([place(3).y, place(3)]);
    expect(count()).toBe(1);
  });
});

it.each<[says: string, height: (x: Decimal) => Decimal, is: boolean]>([
  ['rounding alone is at the target', (x) => x.dividedBy(3).times(3).minus(x), true],
  ['a result a little above is not', () => decimal('1e-20'), false],
  ['a line that meets it is not', (x) => x.minus(5), false],
  ['what cannot be computed is not', () => decimal(NaN), false],
])('%s', (_says, height, is) => expect(look(height).isAtTarget).toBe(is));
