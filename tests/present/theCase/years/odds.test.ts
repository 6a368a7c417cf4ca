import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { textOf } from '../../../../src/present/text/phrase';
import { yearsOdds, yearsOddsSentence } from '../../../../src/present/theCase/years/odds';
import { format, madeIn } from '../budgets';
import { foundBy } from './machine';

const yearly = madeIn('rent [EUR/year]: 1 | budget: cost | in A: 2 | in B: 1');
const monthly = madeIn('rent [EUR/month]: 1 | budget: cost | in A: 2 | in B: 1');
/** Gains of 1, 2, … 100. */
const sorted = Float64Array.from({ length: 100 }, (_, i) => i + 1);

function said(...terms: Parameters<typeof foundBy>): string {
  const found = foundBy(...terms);
  const odds = yearsOdds({ sorted }, found, yearly);
  return textOf(yearsOddsSentence(odds!, { found, made: yearly, format }, { kind: 'certain' })).replaceAll(
    '\u00a0',
    ' ',
  );
}

describe('the odds over the years', () => {
  it('count the draws of the yearly gain above the one that is needed', () => {
    // 100 in 4 years: 25 a year; of what is left 40 count: 15 a year.
    expect(yearsOdds({ sorted }, foundBy(100, 9, 4, 0, 40), yearly)).toEqual({ worth: 0.85, paidBack: 0.75 });
  });

  it('count in the unit of the budget', () => {
    // 1,200 a year is 100 a month: above it lie none; 600 is 50.
    expect(yearsOdds({ sorted }, foundBy(600, 9, 1), monthly)!.worth).toBe(0.5);
  });

  it('are none without draws', () => {
    expect(yearsOdds({ sorted: undefined }, foundBy(1, 1, 1), yearly)).toBeUndefined();
    expect(yearsOdds({ sorted: new Float64Array(0) }, foundBy(1, 1, 1), yearly)).toBeUndefined();
  });

  it('take an outlay of 0 as always paid back', () => {
    expect(yearsOdds({ sorted }, foundBy(0, 1, 1), yearly)!.paidBack).toBe(1);
  });

  it.each([
    [80, 'It pays over the years: in 80 of 100 draws'],
    [320, 'It does not pay over the years: only in 20 of 100 draws'],
    [400, 'It does not pay over the years: in no draw'],
    [200, 'It cannot be told yet whether it pays over the years: in 50 of 100 draws'],
  ])('an outlay of %d, paid back in 4 years: %s', (outlay, beginning) =>
    expect(said(outlay, 1, 4)).toBe(
      `${beginning} from all ranges at once it is worth more than it costs, and as often paid back within 4 years.`,
    ),
  );

  it('tell both where they part, and that the outlay is taken as certain', () => {
    expect(said(100, 1, 4, 0, 40)).toBe(
      'It pays over the years: in 85 of 100 draws from all ranges at once it is worth more than it costs, and paid ' +
        'back within 4 years in 75 of 100 draws.',
    );
    const found = foundBy(100, 1, 4);
    const told = { found, made: yearly, format };
    expect(textOf(yearsOddsSentence({ worth: 1, paidBack: 1 }, told, { kind: 'hangs on ranges' }))).toContain(
      'The outlay is taken as it stands today, though it hangs on entries with a range: give it one',
    );
  });
});

describe('an outlay with a range', () => {
  const range = { low: decimal(0), high: decimal(200) };
  /** Draws of a gain that is uniform from 0 to 100. */
  const uniform = Float64Array.from({ length: 50_000 }, (_, i) => (100 * (i + 0.5)) / 50_000);
  const odds = (seed: number, found = foundBy(100, 1, 4, 0, 40)) =>
    yearsOdds({ sorted: uniform }, found, yearly, { range, seed })!;

  it('is drawn beside the gain, and the same start number gives the same odds', () => {
    expect(odds(1)).toEqual(odds(1));
    expect(odds(2)).not.toEqual(odds(1));
    // A gain above (outlay − 40) ÷ 4 with an outlay triangular about 100: 1 − E[max(0, o − 40)] ÷ 400. With o² ÷ 20,000
    // the chance below o up to 100, E[max(0, o − 40)] = 60 + ∫₀⁴⁰ o² ÷ 20,000 do = 60 + 1.0667.
    expect(odds(1).worth).toBeCloseTo(1 - 61.0667 / 400, 2);
    // Paid back without what is left: 1 − 100 ÷ 400.
    expect(odds(1).paidBack).toBeCloseTo(0.75, 2);
  });

  it('makes odds of its own where the gain is certain', () => {
    // 25 a year for 4 years pay an outlay up to 100: half of those drawn.
    const found = foundBy(100, 25, 4);
    const { worth } = yearsOdds({ sorted: undefined, certain: true }, found, yearly, { range, seed: 1 })!;
    expect(worth).toBeCloseTo(0.5, 2);
    expect(yearsOdds({ sorted: undefined, certain: true }, found, yearly)).toBeUndefined();
  });

  it('is paid back where none or less than none is drawn', () => {
    const free = { low: decimal(-20), high: decimal(0) };
    const found = foundBy(-10, 1, 1);
    expect(yearsOdds({ sorted }, found, yearly, { range: free, seed: 1 })!.paidBack).toBe(1);
  });

  it('is named in the sentence', () => {
    const found = foundBy(100, 1, 4);
    const taken = { kind: 'drawn', range } as const;
    expect(
      textOf(yearsOddsSentence({ worth: 1, paidBack: 1 }, { found, made: yearly, format }, taken)).replaceAll(
        '\u00a0',
        ' ',
      ),
    ).toContain('The outlay is drawn too, between 0 EUR and 200.00 EUR, with the same start number.');
  });
});
