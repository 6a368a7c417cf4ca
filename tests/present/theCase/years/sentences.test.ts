import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { textOf } from '../../../../src/present/text/phrase';
import { yearsFinding, yearsRemarks, yearsText } from '../../../../src/present/theCase/years/sentences';
import type { YearsTerms } from '../../../../src/present/theCase/years/terms';
import { format } from '../budgets';
import { machine, toldIn } from './machine';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
const finding = (terms: Partial<YearsTerms>, text = machine): string =>
  plain(textOf(yearsFinding(toldIn(text, terms))));
const remarks = (terms: Partial<YearsTerms>, text = machine): string =>
  plain(textOf(yearsRemarks(toldIn(text, terms))));

/** A change that costs 300 $ a year. */
const loss = `
  hands [USD/year]: 1 | budget: cost | in By hand: 100 | in By machine: 400
`;

describe('what an outlay brings, in words', () => {
  it('says when a machine has paid for itself, and what it is worth', () => {
    expect(finding({ source: 'entries', entries: ['machine'] })).toBe(
      'As the numbers stand, an outlay of 125,000 USD that brings 29,891 USD a year is paid back after 4.8 years, ' +
        'at 5 % a year. Over 10 years it is worth 105,810 USD more today than it costs (net present value).',
    );
    expect(remarks({ source: 'entries', entries: ['machine'] })).toBe(
      'Without interest it is paid back after 4.2 years. Spread evenly over the years that is a gain of ' +
        '13,703 USD a year (annual equivalent). The money put in earns 20.1 % a year (internal rate). Within a year ' +
        'the gain is taken to come evenly; the years are counted from the day the outlay is paid.',
    );
  });

  it('says that it is not paid back in time', () => {
    expect(finding({ typed: decimal(300_000), years: 3 })).toMatch(
      /is not paid back within 3 years, at 5 % a year\. Over 3 years it is worth 218,599 USD less today than it costs/,
    );
  });

  it('says that there is nothing to pay back', () => {
    expect(finding({ typed: decimal(0), years: 1, percent: decimal(0) })).toBe(
      'As the numbers stand there is no outlay, so it is paid back at once: over 1 year without interest the change ' +
        'is worth 29,891 USD today (net present value).',
    );
    expect(remarks({ typed: decimal(0), percent: decimal(0) })).toContain('There is no internal rate');
  });

  it('says that the change frees money, and what that costs', () => {
    const terms = { typed: decimal(-1000), years: 2, percent: decimal(0) };
    expect(finding(terms, loss)).toBe(
      'As the numbers stand the change frees 1,000 USD at the start, so there is nothing to pay back: over 2 years ' +
        'without interest the change is worth 400.00 USD today (net present value).',
    );
    expect(remarks({ ...terms, years: 10 }, loss)).toContain('The money that is freed costs 27.3 % a year');
  });

  it('says a loss as a loss', () => {
    expect(finding({ typed: decimal(100), years: 2 }, loss)).toMatch(
      /^As the numbers stand, an outlay of 100\.00 USD that loses 300\.00 USD a year is not paid back within 2 years/,
    );
    expect(remarks({ typed: decimal(100), years: 2 }, loss)).toContain('that is a loss of');
  });

  it('tells no internal rate where several may fit', () => {
    expect(remarks({ typed: decimal(25_000), left: decimal(-60_000), years: 3 })).toContain(
      'No internal rate is told: money turns round more than once',
    );
  });

  it('says what a rate below 0 means', () => {
    expect(remarks({ typed: decimal(100), percent: decimal(-1) })).toContain(
      'At a rate below 0 money that comes later counts for more than money today.',
    );
    expect(finding({ typed: decimal(100), percent: decimal(-1) })).toContain('at −1 % a year');
  });
});

it.each([
  [1, '1 year'],
  [4.8177, '4.8 years'],
  [12, '12 years'],
  [0.04, 'less than a month'],
  [0.06, '0.1 years'],
])('%d is said as %s', (years, text) => expect(plain(yearsText(years, format))).toBe(text));
