import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { difference, type Moving } from '../../src/model/difference';

const doubled: Moving<Decimal, number> = {
  base: decimal(6),
  depends: true,
  exact: (x) => x.times(2),
  float: (x) => x * 2,
};
const still: Moving<Decimal, number> = { base: decimal(1), depends: false, exact: () => decimal(1), float: () => 1 };
const unknown: Moving<Decimal, number> = { ...still, base: decimal(NaN), exact: () => decimal(NaN), float: () => NaN };

describe('the difference of two moving numbers', () => {
  it('is that of their numbers, today and elsewhere, in both arithmetics', () => {
    const less = difference(doubled, still);
    expect([less.base.toNumber(), less.exact(decimal('0.1')).toString(), less.float(4)]).toEqual([5, '-0.8', 7]);
  });

  it.each([
    ['both', doubled, doubled, true],
    ['the first', doubled, still, true],
    ['the second', still, doubled, true],
    ['neither', still, still, false],
  ])('depends on the inputs where %s does', (_which, own, other, depends) =>
    expect(difference(own, other).depends).toBe(depends),
  );

  it('cannot be computed where one of them cannot', () => {
    const less = difference(doubled, unknown);
    expect([less.base.isNaN(), less.exact(decimal(1)).isNaN(), less.float(1)]).toEqual([true, true, NaN]);
  });
});
