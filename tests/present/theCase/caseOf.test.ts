import { describe, expect, it } from 'vitest';
import { caseIn, hire, madeIn } from './budgets';

describe('a case', () => {
  it('has the four parts with their sums, what changes by plan and in all', () => {
    const { sections, netChange, takenIn, spent, currency } = madeIn(hire);
    const told = sections.map(({ kind, lines, total }) => [
      kind,
      lines.map(({ cell }) => cell.name).join(),
      total.toString(),
    ]);
    expect(told).toEqual([
      ['addedReturns', 'sales', '1200'],
      ['reducedCosts', 'rent', '100'],
      ['addedCosts', 'wages', '700'],
      ['reducedReturns', '', '0'],
    ]);
    expect([netChange, takenIn, spent].map(String)).toEqual(['600', '1200', '600']);
    expect(currency).toBe('EUR');
  });

  it('names what is the same in both plans', () => {
    expect(madeIn(hire).unchanged.map(({ name }) => name)).toEqual(['house']);
  });

  it('keeps the line without a value, in which plan and why', () => {
    const { unknown, netChange } = madeIn(`${hire}\nnone: 0\nseed [EUR/year]: 5 | budget: cost | in B: house / none`);
    expect(unknown.map(({ cell, plans, error }) => [cell.name, ...plans, error.code])).toEqual([
      ['seed', 1, 'division-by-zero'],
    ]);
    expect(netChange.isNaN()).toBe(true);
  });

  it('tells a reason once that holds for both plans', () => {
    const { unknown } = madeIn(`${hire}\nnone: 0\nseed [EUR/year]: house / none | budget: cost`);
    expect(unknown.map(({ plans }) => plans)).toEqual([[0, 1]]);
  });

  it.each([
    ['of one plan is none', 'sales [EUR/year]: 5 | budget: return', 'one plan'],
    ['without marks is none', 'sales [EUR/year]: 5 | in A: 5 | in B: 6', 'no marks'],
    [
      'in two currencies is none',
      'a [EUR/year]: 5 | budget: return | in A: 5 | in B: 6\nb [USD/year]: 5 | budget: cost',
      'units',
    ],
    [
      'by the month and the year is none',
      'a [EUR/year]: 5 | budget: return | in A: 5 | in B: 6\nb [EUR/month]: 5 | budget: cost',
      'units',
    ],
    ['in money as such is none', 'a [EUR]: 5 | budget: return | in A: 5 | in B: 6', 'units'],
  ])('%s', (_claim, text, kind) => expect(caseIn(text).found.kind).toBe(kind));

  it('takes units that are the same though written otherwise', () => {
    const text =
      'a [EUR/year]: 5 | budget: return | in A: 5 | in B: 6\nb [EUR / year]: 5 | budget: cost | in A: 5 | in B: 7';
    expect(madeIn(text).netChange.toString()).toBe('-1');
  });
});
