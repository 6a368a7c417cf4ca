import { describe, expect, it } from 'vitest';
import { textOf } from '../../../src/present/text/phrase';
import { caseSentence, unchangedSentence, unknownSentence } from '../../../src/present/theCase/sentences';
import { format, hire, madeIn } from './budgets';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const told = (text: string): string => plain(textOf(caseSentence(madeIn(text), { plan: 'B', against: 'A' }, format)));

/** A budget whose returns and costs change by so much. */
function changing(returns: number, costs: number, unit = 'EUR/year'): string {
  return `r [${unit}]: 1 | budget: return | in A: 9000 | in B: ${9000 + returns}
    c [${unit}]: 1 | budget: cost | in A: 9000 | in B: ${9000 + costs}`;
}

describe('the finding', () => {
  it.each([
    [
      'a gain adds',
      1200,
      600,
      'B in place of A adds 600 EUR a year: 1,200 EUR more is taken in, 600 EUR more is spent.',
    ],
    [
      'a loss loses',
      600,
      1200,
      'B in place of A loses 600 EUR a year: 600 EUR more is taken in, 1,200 EUR more is spent.',
    ],
    ['less may be spent', 0, -700, 'B in place of A adds 700 EUR a year: as much is taken in, 700 EUR less is spent.'],
    [
      'less may be taken in',
      -700,
      0,
      'B in place of A loses 700 EUR a year: 700 EUR less is taken in, as much is spent.',
    ],
    [
      'more of both may come to the same',
      50,
      50,
      'B in place of A comes to the same: 50 EUR more is taken in, 50 EUR more is spent.',
    ],
    [
      'nothing may change',
      0,
      0,
      'B in place of A changes nothing in the year’s money: as much is taken in, and as much is spent.',
    ],
  ])('%s', (_claim, returns, costs, sentence) => {
    expect(told(changing(returns, costs)).replaceAll('.00', '')).toBe(sentence);
  });

  it('is in whole units where these add up, and in cents where they do not', () => {
    expect(told(changing(7000.4, 2000))).toContain('adds 5,000 EUR a year: 7,000 EUR more is taken in, 2,000 EUR more');
    expect(told(changing(7000.5, 2000.4))).toContain(
      'adds 5,000.10 EUR a year: 7,000.50 EUR more is taken in, 2,000.40 EUR',
    );
  });

  it('has no cents in a currency without them', () => {
    expect(told(changing(900, 100, 'JPY/year'))).toBe(
      'B in place of A adds 800 JPY a year: 900 JPY more is taken in, 100 JPY more is spent.',
    );
  });

  it('says the time that the unit does', () => {
    expect(told(changing(900, 100, 'EUR/month'))).toContain('adds 800.00 EUR a month:');
  });

  it('of what cannot be computed says so', () => {
    const made = madeIn(`${hire}\nnone: 0\nseed [EUR/year]: 5 | label: Seed | budget: cost | in B: house / none`);
    expect(plain(textOf(caseSentence(made, { plan: 'B', against: 'A' }, format)))).toBe(
      'What B in place of A comes to cannot be computed today.',
    );
    expect(textOf(unknownSentence(made.unknown[0]!, (plan) => ['A', 'B'][plan]!))).toMatch(
      /^Seed has no value in B: division by 0/,
    );
  });
});

describe('what is left out', () => {
  it('is named', () =>
    expect(textOf(unchangedSentence(madeIn(hire)))).toBe('Left out, as the same in both plans: House.'));
  it('is nothing where all changes', () => expect(unchangedSentence(madeIn(changing(1, 1)))).toEqual([]));
});
