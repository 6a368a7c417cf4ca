import { describe, expect, it } from 'vitest';
import { numberToText } from '../../../../src/core/number';
import { bed, lookOf } from './given';

/** A hill with its top at 12 days, 12 days late, and 70 holes: by hand 1000 − 1 − 1 − 1 … */
const hill = '(1000 - ((early - 12 * one) / one) ^ 2 - ((holes - 70 * hole) / hole) ^ 2) * unit';

describe('the best weeks', () => {
  it('are the top of the hill, in exact numbers', () => {
    const { best } = lookOf(bed(hill));
    expect([best?.time, best?.density, best?.exact].map((value) => numberToText(value!))).toEqual(['12', '70', '1000']);
  });

  it('are flat as far as the result stays within a fiftieth of the best', () => {
    // 20 below the best are 4 days (16), not 5 (25); of the densities 5 apart none but the best is (25).
    const { best } = lookOf(bed(hill));
    expect(best?.flatTimes.map(numberToText)).toEqual(['8', '15']);
    expect(best?.flatDensities.map(numberToText)).toEqual(['70', '70']);
  });

  it('count what the total time held does to the next stage', () => {
    const late = '(1000 - ((late - 15 * one) / one) ^ 2) * unit + holes * 0 * unit / hole';
    expect(numberToText(lookOf(bed(late)).best!.time)).toBe('9');
    expect(lookOf(bed(late), { held: 'next' }).isFlat).toBe(true);
  });

  it('are the lowest where that is best', () => {
    expect(numberToText(lookOf(bed(hill), {}, 'lowest').best!.density)).toBe('30');
  });

  it('pass over what cannot be computed', () => {
    const { best, grid } = lookOf(bed(`early > 12 * one ? unit * sqrt(-1 * early / early) : ${hill}`));
    expect(grid.values.flat().some((value) => Number.isNaN(value))).toBe(true);
    expect(numberToText(best!.time)).toBe('12');
  });

  it('are none where nothing can be computed', () => {
    expect(lookOf(bed('unit * sqrt(-1 * early / early)')).best).toBeUndefined();
  });
});
