import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { textOf } from '../../../src/present/text/phrase';
import { headlineSentence } from '../../../src/present/theCase/headline';
import { format, hire, madeIn } from './budgets';

/** What is said of a margin that changes by so much, beside a net change of 600. */
function told(change: string): string {
  const made = madeIn(hire);
  const margin = { ...made.sections[0]!.lines[0]!.cell, label: 'Margin' };
  return textOf(headlineSentence(made, margin, decimal(change), format)).replaceAll('\u00a0', ' ');
}

describe('the headline beside the budget', () => {
  it('agrees', () => expect(told('600')).toBe('Margin changes by the same.'));
  it('agrees but for rounding on the way', () => expect(told('600.0000000001')).toBe('Margin changes by the same.'));
  it('may be a cost', () => expect(told('-600')).toBe('Margin changes by the same, the other way round.'));
  it('may be more, and why', () => {
    expect(told('950.5')).toBe(
      'Margin changes by +950.50 EUR a year, 350.50 EUR a year more than this budget: ' +
        'it counts entries without a mark in the model’s budget column, or leaves out some that have one.',
    );
  });
  it('may be less', () => expect(told('0')).toContain('Margin changes by 0 EUR a year, 600.00 EUR a year less than'));
  it('is not spoken of where it has no value', () => expect(told('NaN')).toBe(''));
});
