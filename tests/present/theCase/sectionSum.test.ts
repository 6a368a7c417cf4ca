import { describe, expect, it } from 'vitest';
import { sectionSum } from '../../../src/present/theCase/sectionSum';
import { format, hire, madeIn } from './budgets';

/** Of added returns, reduced costs, added costs and reduced returns. */
function sums(text: string): string[] {
  const made = madeIn(text);
  return made.sections.map((section) => sectionSum(section, made, format));
}

describe('the sums of a budget', () => {
  // 6,200 less 5,000 is taken in; 500 less 400 need not be spent, 1,600 less 900 must be.
  it('add what helps, take off what costs, and say where there is no line', () =>
    expect(sums(hire)).toEqual(['+1,200.00', '+100.00', '−700.00', 'none']));

  it('take off what is no longer taken in', () =>
    expect(sums('sales [EUR/year]: 5 | budget: return | in A: 5 | in B: 3')[3]).toBe('−2.00'));

  it('are blank beside a line without a value', () =>
    expect(sums(`${hire}\nnone: 0\nseed [EUR/year]: 5 | budget: cost | in B: house / none`)).toEqual(['', '', '', '']));
});
