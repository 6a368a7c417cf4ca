import { describe, expect, it } from 'vitest';
import { textOf } from '../../../../src/present/text/phrase';
import { doubled, doubledSentence, isUnsure } from '../../../../src/present/theCase/years/doubled';
import { outlayEntries } from '../../../../src/present/theCase/years/terms';
import { format } from '../budgets';
import { askedIn } from './machine';

/** Boards of 1,000 EUR, repaid in the budget over 4 years without interest: 250 a year; they save 700 a year. */
const boards = `
  board_money [EUR]: 0 | label: Boards bought | in A: 0 | in B: 1000
  other_money [EUR]: 0 | label: Other | in A: 0 | in B: 9
  repaid [EUR/year]: board_money * capital_recovery(rate, life) | label: Boards repaid | budget: cost
  rate [%/year]: 0
  life [year]: 4
  hands [EUR/year]: 900 | label: Hands | budget: cost | in A: 900 | in B: 200
  still [1/year]: 0
  rent [EUR/year]: other_money * still | label: Rent | budget: cost
`;

function said(text: string, names: readonly string[]): string {
  const of = askedIn(text);
  const outlay = outlayEntries(of).filter(({ cell }) => names.includes(cell.name));
  const found = doubled(of, outlay);
  return found === undefined
    ? ''
    : textOf(doubledSentence(found, of.made, ({ label }) => label, format)).replaceAll('\u00a0', ' ');
}

describe('an outlay that the budget charges for as well', () => {
  it('is found through the formulas, with the gain without that line', () => {
    expect(said(boards, ['board_money'])).toBe(
      'May count twice: Boards repaid is worked out from Boards bought, which the outlay already pays. ' +
        'Without that line the yearly gain is 700.00 EUR a year.',
    );
  });

  it('is likely where the outlay is typed and a line repays a price over years', () => {
    expect(said(boards, [])).toBe(
      'May count twice: Boards repaid repays a price over the years, perhaps that of this outlay. ' +
        'Without that line the yearly gain is 700.00 EUR a year.',
    );
  });

  it('is none where no line that changes reads the entry', () => {
    expect(said(boards, ['other_money'])).toBe('');
    expect(said(boards.replace('in B: 1000', 'in B: 0'), [])).toBe('');
  });
});

it('an outlay is unsure where it hangs on an entry with a range', () => {
  const of = askedIn(`
    count [board]: 10 | range: 5 15
    price [EUR/board]: 3
    money [EUR]: count * price | in A: 0
    sure [EUR]: 5
    hands [EUR/year]: 900 | budget: cost | in A: 900 | in B: 200
  `);
  const [money, sure] = outlayEntries(of);
  expect(isUnsure(of.model, of.plans, [money!])).toBe(true);
  expect(isUnsure(of.model, of.plans, [sure!])).toBe(false);
});
