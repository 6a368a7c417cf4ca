import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { evaluate } from '../../src/formula/evaluate';
import { exactly, floating, longSum, outcome, truth, type Given } from './given';

const cells: Given = [
  ['a', '2', ''],
  ['zero', '0', ''],
  ['gone', '?', ''],
  ['yes', '1', truth],
  ['no', '0', truth],
  ['lost', '?', truth],
  ['share', '5', '%'],
  ['stage', '2', 'week'],
];

/** The reasons given for a formula without a value, in either arithmetic. */
function reasons(formula: string): string[] {
  const exactReasons = outcome(exact, formula, '', cells)[1];
  expect(outcome(float, formula, '', cells)[1]).toEqual(exactReasons);
  return exactReasons.map(({ code, message }) => `${code}: ${message}`);
}

describe('only the chosen arm counts:', () => {
  it.each<[formula: string, value: string]>([
    ['a > 0 ? a : 1 / zero', '2'],
    ['a < 0 ? 1 / zero : a', '2'],
    ['a > 0 ? a : gone', '2'],
    ['yes ? 1 : log(zero)', '1'],
    ['no ? 1 / 0 : yes ? 5 : 1 / 0', '5'],
    ['(zero == 0 ? 0 : a / zero) + 1', '1'],
    ['yes ? no : lost', '0'],
  ])('%s is %s', (formula, value) => {
    expect(exactly(formula, '', cells)).toBe(value);
    expect(floating(formula, '', cells)).toBe(Number(value));
    expect(reasons(formula)).toEqual([]);
  });
});

describe('and, or stop early:', () => {
  it.each<[formula: string, value: string]>([
    ['no and 1 / zero > 1', '0'],
    ['yes or 1 / zero > 1', '1'],
    ['no and lost', '0'],
    ['yes or lost', '1'],
    ['no and no or yes', '1'],
    ['zero > 0 and a / zero > 1', '0'],
    ['zero == 0 or a / zero > 1', '1'],
    ['yes and yes', '1'],
    ['yes and no', '0'],
    ['no or no', '0'],
    ['no or yes', '1'],
    ['not no', '1'],
    ['not yes', '0'],
  ])('%s is %s', (formula, value) => {
    expect(exactly(formula, '', cells)).toBe(value);
    expect(floating(formula, '', cells)).toBe(Number(value));
    expect(reasons(formula)).toEqual([]);
  });

  it.each(['yes and lost', 'no or lost', 'lost and no', 'lost or yes', 'not lost', 'lost ? 1 : 2', 'gone > 1 or yes'])(
    'but %s is not known',
    (formula) => {
      expect(exactly(formula, '', cells)).toBe('NaN');
      expect(floating(formula, '', cells)).toBeNaN();
    },
  );
});

describe('what cannot be computed has its reason, the first met:', () => {
  it.each<[formula: string, reason: string]>([
    ['1 / 0', 'division-by-zero: division by 0'],
    ['a / zero', 'division-by-zero: division by 0'],
    ['0 / zero', 'division-by-zero: division by 0'],
    ['1 + 2 * (a / (a - 2))', 'division-by-zero: division by 0'],
    ['1 / 0 + 1 / 0', 'division-by-zero: division by 0'],
    ['max(1 / 0, log(0))', 'division-by-zero: division by 0'],
    ['0 ^ -1', 'division-by-zero: 0 to a negative power'],
    ['(-8) ^ (1 / 3)', 'domain: a negative number to a power that is not whole'],
    ['(-10) ^ 100000', 'overflow: result too large'],
    ['10 ^ 100000', 'overflow: result too large'],
    ['log(0)', 'domain: logarithm of a number not above 0'],
    ['log10(-1)', 'domain: logarithm of a number not above 0'],
    ['sqrt(-a)', 'domain: square root of a negative number'],
    ['exp(100000)', 'overflow: result too large'],
    ['1 / 0 > 1', 'division-by-zero: division by 0'],
    ['1 / 0 > 1 or yes', 'division-by-zero: division by 0'],
    ['1 / 0 == 1 ? 1 : 2', 'division-by-zero: division by 0'],
  ])('%s', (formula, reason) => {
    expect(exactly(formula, '', cells)).toBe('NaN');
    expect(floating(formula, '', cells)).toBeNaN();
    expect(reasons(formula)[0]).toBe(reason);
  });

  it.each([
    'gone',
    'gone + 1',
    'gone / 0',
    'gone > 1',
    'max(gone, 1)',
    '-gone',
    'gone ^ 0',
    'gone == gone',
    'round(gone)',
  ])('%s has none of its own: the fault lies upstream', (formula) => {
    expect(exactly(formula, '', cells)).toBe('NaN');
    expect(floating(formula, '', cells)).toBeNaN();
    expect(reasons(formula)).toEqual([]);
  });
});

describe('ties', () => {
  it.each<[formula: string, value: string]>([
    ['1/3*3 == 1', '1'],
    ['1/3*3 < 1', '0'],
    ['1/3*3 >= 1', '1'],
    ['0.1 + 0.2 == 0.3', '1'],
    ['0.1 + 0.2 > 0.3', '0'],
    ['0.1 + 0.2 != 0.3', '0'],
    ['floor(1/3*3)', '1'],
    ['ceil(1/3*3)', '1'],
    ['floor(0.7 / 0.1)', '7'],
    ['ceil(1.1 * 10)', '11'],
    ['round(1.005, 2)', '1.01'],
    ['round(2.5)', '3'],
    ['round(-2.5)', '-3'],
    ['floor(2.999999)', '2'],
    ['5 * share == 25 * (1 / 100)', '1'],
    ['stage == 14 * (stage / 14)', '1'],
  ])('%s is %s in both', (formula, value) => {
    expect(exactly(formula, '', cells)).toBe(value);
    expect(floating(formula, '', cells)).toBe(Number(value));
  });
});

describe('numbers', () => {
  it('are exact where decimals are', () => {
    expect(exactly('0.1 + 0.2')).toBe('0.3');
    expect(exactly('1.1 * 1.1')).toBe('1.21');
    expect(exactly('share / 3', '%', cells)).toBe('1.666666666666666666666666666666667');
  });

  it.each<[formula: string, value: number]>([
    ['1e200 * 1e200 > 3', 1],
    ['1 / (1e200 * 1e200) < 1e-300', 1],
  ])('beyond float64 are not known there or right: %s', (formula, value) => {
    expect(exactly(formula)).toBe(String(value));
    expect([value, NaN]).toContainEqual(floating(formula));
  });

  it('a sum of 4,999 terms is computed', () => {
    const sum = Array(4999).fill('a').join('+');
    expect(exactly(sum, '', cells)).toBe('9998');
    expect(floating(sum, '', cells)).toBe(9998);
  });

  it('so is a chain four times as long: the stack that a browser leaves may be smaller', () => {
    const value = evaluate(longSum(20_000), { arithmetic: float, cell: () => 2, fail: () => undefined });
    expect(value).toBe(40_002);
  });
});
