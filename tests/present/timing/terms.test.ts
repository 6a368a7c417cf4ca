import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import {
  allowanceFactor,
  canBe,
  termFault,
  termsOf,
  usualTerms,
  type TermsEntered,
} from '../../../src/present/timing/terms';
import { english } from './trials';

/** The usual terms, with others in their place. */
const entered = (others: Partial<TermsEntered> = {}): TermsEntered => ({
  ...usualTerms,
  allowanceOf: 'job',
  ...others,
});

describe('the terms of a time study', () => {
  it('are those that were entered, and the half-widths of their confidence', () => {
    const { terms, confidence, hasStandardTime } = termsOf(entered({ within: decimal(3) }));
    expect([terms.allowance, terms.within, confidence].map(String)).toEqual(['15', '3', '95']);
    expect([terms.allowanceOf, hasStandardTime]).toEqual(['job', true]);
    expect(terms.halfWidths.z).toBeCloseTo(1.959964, 6);
  });

  it.each([
    ['allowance', -1, false],
    ['allowance', 0, true],
    ['within', 0, false],
    ['confidence', 0, false],
    ['confidence', 100, false],
    ['confidence', 99.9999, true],
  ] as const)('%s of %s per cent: %s', (name, value, can) => expect(canBe(name, decimal(value))).toBe(can));

  it('have no standard time where the allowance is the whole day, and do where it is as much on top of the job', () => {
    expect(termsOf(entered({ allowance: decimal(100), allowanceOf: 'day' })).hasStandardTime).toBe(false);
    expect(termsOf(entered({ allowance: decimal(100) })).hasStandardTime).toBe(true);
  });

  it('have finite half-widths at the highest confidence', () => {
    const {
      terms: { halfWidths },
    } = termsOf(entered({ confidence: decimal('99.9999') }));
    expect(halfWidths.z).toBeCloseTo(4.8916, 3);
    expect(Number.isFinite(halfWidths.t(1))).toBe(true);
  });

  it('say what is wrong with a number', () => {
    expect(termFault('within', decimal(0), english)).toContain('not above 0: 0.');
    expect(termFault('confidence', decimal(100), english)).toContain(': 100. Give per cent');
    expect(termFault('allowance', decimal(-1), english)).toContain('allowance below 0: −1.');
    expect(termFault('allowance', decimal(0), english)).toBeUndefined();
  });

  it('have the factor that people key in', () => {
    const { sign, by } = allowanceFactor(decimal(15), 'day');
    expect(`${sign} ${by.toString()}`).toBe('÷ 0.85');
    expect(allowanceFactor(decimal(15), 'job').by.toString()).toBe('1.15');
  });
});
