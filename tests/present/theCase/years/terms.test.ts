import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import {
  aYear,
  canBeRate,
  chosenEntries,
  moneyEntries,
  outlayEntries,
  refusedRate,
  yearsAsked,
} from '../../../../src/present/theCase/years/terms';
import { madeIn } from '../budgets';
import { askedIn, machine, usualTerms } from './machine';

describe('the outlay of a case', () => {
  it('can be any entry in the budget’s money, and no other', () => {
    const of = askedIn(`${machine}\n other [EUR]: 5\n price [USD/plant]: 1\n heads [plant/year]: 3`);
    expect(moneyEntries(of.model, of.made).map(({ name }) => name)).toEqual(['machine', 'spares', 'spread']);
  });

  it('is how much more of the entries the plan that is taken has, whatever their units', () => {
    const of = askedIn(`${machine}\n boards [thousand*USD]: 2 | in By hand: 2 | in By machine: 1.5`);
    const all = outlayEntries(of);
    expect(all.map(({ cell, more }) => `${cell.name} ${more.toString()}`)).toEqual([
      'machine 125000',
      'spares 0',
      'spread 0',
      'boards -500',
    ]);
    const terms = { ...usualTerms, source: 'entries' as const, entries: ['boards', 'machine', 'gone'] };
    expect(yearsAsked(of.made, terms, chosenEntries(all, terms))?.outlay.toString()).toBe('124500');
  });

  it('is asked of only once it is given: 0 is an outlay too', () => {
    const { made } = askedIn(machine);
    expect(yearsAsked(made, usualTerms, [])).toBeUndefined();
    expect(yearsAsked(made, { ...usualTerms, source: 'entries', typed: decimal(5) }, [])).toBeUndefined();
    expect(yearsAsked(made, { ...usualTerms, typed: decimal(0) }, [])?.outlay.toString()).toBe('0');
  });
});

it('the gain is money a year, whatever the budget is in', () => {
  const made = madeIn('rent [thousand*EUR/month]: 1 | budget: cost | in A: 2 | in B: 1');
  expect(aYear(made.netChange, made).toString()).toBe('12000');
});

it.each([
  ['-100', false],
  ['-100.5', false],
  ['-99.9', true],
  ['-1', true],
  ['0', true],
  ['300', true],
])('a rate of %s %% can be used: %s', (text, can) => {
  expect(canBeRate(decimal(text))).toBe(can);
  expect(refusedRate(text) === undefined).toBe(can);
});

it('a rate that cannot be used is refused with a reason', () => {
  expect(refusedRate('-100')).toBe(
    'no rate above −100 % a year: -100. At such a rate money that comes later has no worth today.',
  );
});
