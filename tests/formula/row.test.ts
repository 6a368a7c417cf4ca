import { describe, expect, it } from 'vitest';
import { isStep, rowOf } from '../../src/formula/row';
import { checked, longSum, type Given } from './given';

const cells: Given = [
  ['a', '2', ''],
  ['b', '3', ''],
  ['share', '5', '%'],
];

/** The steps of a formula's row, and what the row begins with. */
function ops(formula: string): string[] {
  const { start, steps } = rowOf(checked(formula, '', cells).node);
  return [start.op, ...steps.map(({ op }) => op)];
}

describe('a row', () => {
  it.each<[formula: string, ops: string[]]>([
    ['a', ['cell']],
    ['a + b', ['cell', 'add']],
    ['a - b + a', ['cell', 'subtract', 'add']],
    ['(a + b) * a / b', ['cell', 'add', 'multiply', 'divide']],
    ['share', ['cell', 'convert']],
    ['share * a', ['cell', 'multiply', 'convert']],
    ['a ^ 2 * b', ['power', 'multiply']],
    ['-a * b', ['negate', 'multiply']],
    ['max(a, b) - 1', ['call', 'subtract']],
    ['a - (b + a)', ['cell', 'subtract']],
  ])('of %s', (formula, expected) => expect(ops(formula)).toEqual(expected));

  it('is as long as a sum of 20,000 signs', () => {
    const { start, steps } = rowOf(longSum(20_000));
    expect([start.op, steps.length]).toEqual(['cell', 20_000]);
  });

  it('ends at what is no step', () => {
    expect(isStep(checked('a < b', '', cells).node)).toBe(false);
    expect(isStep(checked('a / b', '', cells).node)).toBe(true);
  });
});
