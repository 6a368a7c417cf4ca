import { describe, expect, it } from 'vitest';
import { mended } from '../../src/formula/mended';

const names = new Set(['wage', 'hours', 'allowance']);
const isName = (word: string): boolean => names.has(word);

describe('a formula as it is typed', () => {
  it.each([
    ['“wage” * 2', 'wage * 2'],
    ["wage * 54'000", 'wage * 54000'],
    ['wage × hours ÷ 2', 'wage * hours / 2'],
    ['wage − 2', 'wage - 2'],
    ['=wage * 2', 'wage * 2'],
    ['wage * 1,5', 'wage * 1.5'],
    ['min(1,5)', 'min(1,5)'],
    ['(1,5 + wage)', '(1.5 + wage)'],
    ['2 x wage', '2 * wage'],
    ['wage x 12', 'wage * 12'],
    ['3x4', '3 * 4'],
    ['2 wage', '2 * wage'],
    ['2 (wage + hours)', '2 * (wage + hours)'],
    ['wage * 12 %', 'wage * 0.12'],
    ['wage * (1 + allowance %)', 'wage * (1 + allowance)'],
    ['hours ≤ 40 && wage ≠ 0', 'hours <= 40 and wage != 0'],
    ['300 EUR/month * 12', '300 EUR/month * 12'],
    ['54 000', '54000'],
    ['max(wage, hours)', 'max(wage, hours)'],
    ['hours2 * 1e5', 'hours2 * 1e5'],
  ])('%s is written %s', (typed, written) => {
    expect(mended(typed, 'decimal', isName)).toBe(written);
  });

  it('a comma before three digits is a decimal one or a mark of thousands', () => {
    expect(['decimal', 'thousands'].map((as) => mended('54,000 * wage', as as 'decimal', isName))).toEqual([
      '54.000 * wage',
      '54000 * wage',
    ]);
  });

  it('x stays where an entry is called so', () => {
    expect(mended('2 * x', 'decimal', (word) => word === 'x')).toBe('2 * x');
  });
});
