import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { textOf } from '../../../src/present/text/phrase';
import { amount, roundingNote, signedAmount } from '../../../src/present/theCase/rounded';
import { format, hire, madeIn } from './budgets';

/** Returns that change by so much each. */
function returns(changes: readonly string[]): string {
  return changes.map((change, i) => `r${i} [EUR/year]: 0 | budget: return | in A: 0 | in B: ${change}`).join('\n');
}

const told = (text: string): string => textOf(roundingNote(madeIn(text), format));

describe('amounts of a budget', () => {
  it('are in the currency’s minor unit, half away from zero', () => {
    expect(amount(decimal('1234.565'), 'EUR', format)).toBe('1,234.57');
    expect(amount(decimal('1234.5'), 'JPY', format)).toBe('1,235');
    expect(amount(decimal('1234.5675'), 'KWD', format)).toBe('1,234.568');
    expect(amount(decimal(NaN), 'EUR', format)).toBe('no value');
  });

  it('carry a sign in sums', () => {
    expect(signedAmount(decimal('-880.6'), madeIn(hire), format)).toBe('\u2212880.60');
    expect(signedAmount(decimal('880.6'), madeIn(hire), format)).toBe('+880.60');
  });
});

describe('rounding', () => {
  it('is not spoken of where all adds up', () => {
    expect(told(hire)).toBe('');
    expect(told(returns(['1.004', '2.000']))).toBe('');
  });

  it('says where lines do not add up to their sum', () => {
    expect(told(returns(['1.004', '2.004']))).toBe(
      'Each amount is rounded by itself. The lines of added returns as shown add up to 3.00, their exact sum rounds to 3.01.',
    );
  });

  it('says where the sums do not add up to the net change', () => {
    const text = `${returns(['10.004'])}\nc [EUR/year]: 0 | budget: cost | in A: 0 | in B: 3.001`;
    expect(told(text)).toBe('');
    const off = `${returns(['10.004'])}\nc [EUR/year]: 0 | budget: cost | in A: 0 | in B: 2.995`;
    expect(told(off)).toBe(
      'Each amount is rounded by itself. The four sums as shown come to +7.00, the exact net change rounds to +7.01.',
    );
  });
});
