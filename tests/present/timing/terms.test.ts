import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { allowanceFactor, termFault, termsOf, termText } from '../../../src/present/timing/terms';
import { english } from './trials';

const choice = (kept: Readonly<Record<string, string>> = {}): { setting: (key: string) => string } => ({
  setting: (key) => kept[key.replace('timing ', '')] ?? '',
});

describe('the terms of a time study', () => {
  it('are the usual ones until set', () => {
    const { terms, confidence, hasStandardTime } = termsOf(choice());
    expect([terms.allowance, terms.within, confidence].map(String)).toEqual(['15', '5', '95']);
    expect([terms.allowanceOf, hasStandardTime]).toEqual(['job', true]);
    expect(terms.halfWidths.z).toBeCloseTo(1.959964, 6);
  });

  it('are kept', () => {
    const { terms, confidence } = termsOf(
      choice({ allowance: '12.5', 'allowance of': 'day', within: '3', confidence: '90' }),
    );
    expect([terms.allowance, terms.within, confidence].map(String)).toEqual(['12.5', '3', '90']);
    expect(terms.allowanceOf).toBe('day');
  });

  it.each([
    ['allowance', '-1'],
    ['within', '0'],
    ['confidence', '0'],
    ['confidence', '100'],
    ['within', 'x'],
  ] as const)('give way to the usual one where kept badly: %s %s', (name, text) => {
    expect(termText(choice({ [name]: text }), name)).toBe({ allowance: '15', within: '5', confidence: '95' }[name]);
  });

  it('have no standard time where the allowance is the whole day, and do where it is as much on top of the job', () => {
    expect(termsOf(choice({ allowance: '100', 'allowance of': 'day' })).hasStandardTime).toBe(false);
    expect(termsOf(choice({ allowance: '100' })).hasStandardTime).toBe(true);
  });

  it('have finite half-widths at the highest confidence', () => {
    const {
      terms: { halfWidths },
    } = termsOf(choice({ confidence: '99.9999' }));
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
