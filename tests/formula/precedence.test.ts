import fc from 'fast-check';
import { all, create } from 'mathjs/number';
import { describe, expect, it } from 'vitest';
import { float } from '../../src/core/float';
import { outcome } from './given';

// The oracle is the parser's library with its own evaluator. Its comparisons are brought to our rule on ties: relative.
const oracle = create(all!, { relTol: 1e-12, absTol: 0 });

const operand = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom('1', '2', '3', '5', '0.5', '1.25', '7e-1', '10') },
  { weight: 1, arbitrary: fc.constantFrom('(1 - 3)', '(2 + 3)', '(4 / 8)') },
);
const sign = fc.constantFrom('+', '-', '*', '/', '^', ' + ', ' - ', ' * ', ' / ', ' ^ ');
const prefix = fc.constantFrom('', '', '', '-', '- ', '--');

/** Operands with signs between them and no brackets around them: only precedence says what belongs together. */
const chain = fc
  .array(fc.tuple(sign, prefix, operand), { minLength: 1, maxLength: 6 })
  .chain((rest) =>
    fc.tuple(prefix, operand).map(([first, value]) => first + value + rest.map((part) => part.join('')).join('')),
  );

const comparison = fc
  .tuple(chain, fc.constantFrom('<', '<=', '>', '>=', '==', '!='), chain)
  .map((parts) => parts.join(' '));
const condition = fc
  .array(fc.tuple(fc.constantFrom('', '', 'not '), comparison, fc.constantFrom(' and ', ' or ')), {
    minLength: 1,
    maxLength: 4,
  })
  .map((parts) =>
    parts.map(([not, test, joint], i) => (not ? `not (${test})` : test) + (parts[i + 1] ? joint : '')).join(''),
  );

const isFinite = (x: unknown): x is number => typeof x === 'number' && Number.isFinite(x);

/** Runs a formula both ways; formulas that divide by 0 or overflow on the way are left out and counted. */
function agree(formulas: fc.Arbitrary<string>, numRuns: number): { left: number } {
  const count = { left: 0 };
  const property = fc.property(formulas, (formula) => {
    const [ours, reasons] = outcome(float, formula);
    const theirs = Number(oracle.evaluate(formula));
    if (reasons.length > 0 || !isFinite(theirs)) count.left += 1;
    else expect([formula, ours + 0]).toEqual([formula, theirs + 0]);
  });
  fc.assert(property, { numRuns, seed: 1 });
  return count;
}

describe('formulas give what the library gives:', { timeout: 60_000 }, () => {
  it.each<[formula: string, value: number]>([
    ['-2^2', -4],
    ['2^-2', 0.25],
    ['2^3^2', 512],
    ['-2^-2', -0.25],
    ['10 - 4 - 3', 3],
    ['100 / 10 / 5', 2],
    ['2 * -3', -6],
    ['1 - -1', 2],
    ['--2^2', 4],
    ['1 + 2 * 3 ^ 2', 19],
    ['1 + 1 > 1 ? 2 : 3', 2],
    ['1 > 2 ? 1 : 2 > 1 ? 4 : 5', 4],
    ['1 > 2 and 1 > 0 or 2 > 1 ? 1 : 0', 1],
    ['2 > 1 or 1 > 0 and 1 > 2 ? 1 : 0', 1],
    ['not (1 > 2) and 2 > 1 ? 1 : 0', 1],
  ])('%s is %d', (formula, value) => {
    expect(outcome(float, formula)[0]).toBe(value);
    expect(Number(oracle.evaluate(formula))).toBe(value);
  });

  it('thousands of random sums, products and powers', () => {
    expect(agree(chain, 5000).left).toBeLessThan(1500);
  });

  it('thousands of random choices by comparison', () => {
    const choice = fc.tuple(comparison, chain, chain).map(([test, yes, no]) => `${test} ? ${yes} : ${no}`);
    expect(agree(choice, 2000).left).toBeLessThan(1000);
  });

  it('thousands of random choices by and, or and not', () => {
    expect(
      agree(
        condition.map((test) => `${test} ? 1 : 0`),
        2000,
      ).left,
    ).toBeLessThan(1000);
  });
});
