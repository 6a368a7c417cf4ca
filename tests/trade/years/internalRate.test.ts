import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { internalRate } from '../../../src/trade/years/internalRate';

function of(...amounts: number[]): string {
  const found = internalRate(amounts.map(decimal));
  return found.kind === 'one' ? found.rate.toFixed(9) : found.kind;
}

describe('the internal rate', () => {
  // numpy-financial, documentation and tests of irr; the digits beyond the printed ones recomputed in its own way.
  it.each([
    [[-100, 39, 59, 55, 20], 0.28095],
    [[-100, 0, 0, 74], -0.0955],
    [[-100, 100, 0, 7], 0.06206],
  ])('of %j is that of numpy-financial, %d', (amounts, printed) =>
    expect(Number(of(...amounts))).toBeCloseTo(printed, printed === -0.0955 ? 4 : 5),
  );

  // The same tests print −0.0833; −0.6789 fits as well, so neither is told here.
  it('is not told where money turns round twice and two rates fit', () => {
    expect(of(-100, 100, 0, -7)).toBe('several');
  });

  it('is none where money turns round twice and no rate fits', () => {
    expect(of(-100, 100, 0, -40)).toBe('none');
    expect(of(-100, 10, 0, -7)).toBe('none');
  });

  it('is not told where one rate fits only just, at a top that touches 0', () => {
    // −100 + 200 x − 100 x² = −100 (1 − x)².
    expect(of(-100, 200, -100)).toBe('several');
  });

  it('counts three rates as several', () => {
    // The factors 1/2, 1 and 2: (x − 1/2)(x − 1)(x − 2) = x³ − 3.5 x² + 3.5 x − 1.
    expect(of(-1, 3.5, -3.5, 1)).toBe('several');
  });

  it.each([[[]], [[0, 0]], [[5]], [[-100]], [[-100, -5, 0]], [[0, 3, 3]], [[100, 0, 2]]])(
    'is none where money flows one way only: %j',
    (amounts) => expect(of(...amounts)).toBe('none'),
  );

  it('is none where an amount is not known', () => {
    expect(of(-100, NaN)).toBe('none');
  });

  it('is 0 where just as much comes back', () => {
    expect(Math.abs(Number(of(-100, 50, 0, 50)))).toBe(0);
  });

  it('is below −90 % where hardly anything comes back, and far above 100 % where much does', () => {
    expect(of(-100, 1)).toBe('-0.990000000');
    expect(of(-1, 1000)).toBe('999.000000000');
  });

  it('leaves nothing of the value today, whatever comes in', () => {
    const amount = fc.integer({ min: 0, max: 100_000 });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.array(amount, { minLength: 1, maxLength: 30 }),
        (paid, back) => {
          fc.pre(back.some((each) => each > 0));
          const found = internalRate([-paid, ...back].map(decimal));
          expect(found.kind).toBe('one');
          if (found.kind !== 'one') return;
          const growth = found.rate.plus(1);
          const value = back.reduce(
            (total, each, i) => total.plus(decimal(each).dividedBy(growth.pow(i + 1))),
            decimal(-paid),
          );
          expect(value.abs().dividedBy(paid).toNumber()).toBeLessThan(1e-12);
        },
      ),
      { numRuns: 40 },
    );
  });
});
