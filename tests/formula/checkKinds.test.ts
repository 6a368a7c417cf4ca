import { describe, expect, it } from 'vitest';
import type { Unit } from '../../src/core/unit';
import { checkFormula } from '../../src/formula/check';
import { parse } from '../../src/formula/parse';
import { check, checked, exactly, fault, truth, unitOf, type Given } from './given';

const cells: Given = [
  ['transplant_time', '12', 's/plant'],
  ['wage', '18', 'EUR/h'],
  ['n', '3', ''],
  ['open', '1', truth],
  ['full', '0', truth],
];

describe('true and false are a kind of their own:', () => {
  it.each<[formula: string, value: string]>([
    ['n > 2', '1'],
    ['n > 3', '0'],
    ['not (n > 3)', '1'],
    ['open and not full', '1'],
    ['full or n == 3', '1'],
    ['open', '1'],
    ['open ? full : open', '0'],
    ['n > 2 ? n > 4 : open', '0'],
  ])('%s is truth %s', (formula, value) => {
    expect(checked(formula, '', cells).kind).toBe('truth');
    expect(exactly(formula, '', cells)).toBe(value);
  });

  it.each(['n', 'n + 1', 'open ? 1 : 0', 'min(n, 2)'])('%s is a number', (formula) =>
    expect(checked(formula, '', cells).kind).toBe('number'),
  );

  it.each([
    'open + 1',
    '1 + open',
    '-open',
    'open * n',
    'n ^ open',
    'open ^ 2',
    'open > 0',
    'open == full',
    'n < open',
    'min(n, open)',
    'abs(open)',
    '(n > 1) < 2',
    'capital_recovery(open, n)',
    '-(n > 1)',
  ])('true or false is no number: %s', (formula) => {
    expect(fault(formula, '', cells).code).toBe('kind');
    expect(fault(formula, '', cells).message).toContain('true or false where a number must be: ');
  });

  it.each(['n ? 1 : 0', '1 ? 1 : 0', 'not n', 'n and open', 'open and n', 'open or 1', 'not 0', '(n + 1) ? 2 : 3'])(
    'a number is no condition: %s',
    (formula) => {
      expect(fault(formula, '', cells).code).toBe('kind');
      expect(fault(formula, '', cells).message).toContain('number where a condition must be: ');
    },
  );

  it.each(['open ? 1 : full', 'open ? full : 1', 'n > 1 ? n > 2 : 0'])('arms are of one kind: %s', (formula) =>
    expect(fault(formula, '', cells).message).toContain('a choice between a number and true or false'),
  );

  it.each(['EUR', '%', 'week'])('and has no unit, such as %s', (unit) =>
    expect(fault('n > 2', unit, cells)).toMatchObject({
      code: 'kind',
      message: `true or false has no unit: ${unit}. Leave the unit blank.`,
    }),
  );
});

describe('names', () => {
  it.each<[formula: string, message: string]>([
    ['transplnt_time * wage', 'name not known: transplnt_time. Did you mean transplant_time?'],
    ['wages', 'name not known: wages. Did you mean wage?'],
    ['Wage', 'name not known: Wage. Did you mean wage?'],
    ['price_of_seed', 'name not known: price_of_seed. Add a cell of that name, or correct it.'],
    ['pi', 'name not known: pi.'],
    ['e', 'name not known: e. Did you mean n?'],
    ['end', 'name not known: end.'],
    ['min', 'function without its brackets: min. Its form is min(a, …).'],
  ])('%s', (formula, message) => {
    expect(fault(formula, '', cells).code).toBe('name-unknown');
    expect(fault(formula, '', cells).message).toContain(message);
  });

  it.each<[formula: string, message: string]>([
    ['mni(1, 2)', 'function not known: mni. Did you mean min?'],
    ['squareroot(2)', 'function not known: squareroot. Known are abs, min, max, '],
    ['sin(n)', 'function not known: sin. Did you mean min?'],
    ['wage(n)', 'not a function: wage. It is a cell; write * before the bracket to multiply.'],
    ['sum(1, 2)', 'function not known: sum.'],
  ])('of functions: %s', (formula, message) => {
    expect(fault(formula, '', cells).code).toBe('function-name');
    expect(fault(formula, '', cells).message).toContain(message);
  });

  const hostile = ['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf', 'prototype'];

  it.each(hostile)('%s is not known unless a cell has it', (name) => {
    expect(fault(name, '', cells).code).toBe('name-unknown');
    expect(fault(`${name}(1)`, '', cells).code).toBe('function-name');
    expect(exactly(`${name} + 1`, '', [[name, '2', '']])).toBe('3');
  });

  it.each(['pi', 'e', 'i', 'm', 'cm', 'EUR', 'week'])('%s is a cell where there is one', (name) =>
    expect(exactly(`2 * ${name}`, '', [[name, '21', '']])).toBe('42'),
  );

  it('of cells with a fault are said to be such', () => {
    const broken = { find: () => ({ cell: 0, kind: 'number' as const, unit: undefined }), names: () => ['broken'] };
    const expression = parse('broken + 1');
    const blank: Unit = unitOf('');
    expect('code' in expression ? expression : checkFormula(expression, blank, broken)).toMatchObject({
      code: 'upstream',
      message: expect.stringContaining('cell with a fault') as string,
      where: { text: 'broken' },
    });
  });
});

describe('the number of values is checked:', () => {
  it.each<[formula: string, message: string]>([
    ['abs()', 'abs takes 1 value, not 0: abs(). Its form is abs(x).'],
    ['abs(1, 2)', 'abs takes 1 value, not 2'],
    ['min()', 'min takes at least 1 value, not 0'],
    ['sqrt(1, 2)', 'sqrt takes 1 value, not 2'],
    ['log(8, 2)', 'log takes 1 value, not 2'],
    ['exp()', 'exp takes 1 value'],
    ['round()', 'round takes 1 to 2 values, not 0'],
    ['round(1, 2, 3)', 'round takes 1 to 2 values, not 3'],
    ['floor(1, 2)', 'floor takes 1 value'],
    ['capital_recovery(0.1)', 'capital_recovery takes 2 values, not 1'],
    ['annuity_factor(0.1, 2, 3)', 'annuity_factor takes 2 values, not 3'],
    ['expected_uses(0.1)', 'expected_uses takes 2 values'],
    ['learning_factor(0.8)', 'learning_factor takes 2 values'],
    ['whole_batch(1, 2, 3, 4)', 'whole_batch takes at least 5 values, not 4'],
  ])('%s', (formula, message) => {
    expect(fault(formula, '', cells).code).toBe('arity');
    expect(fault(formula, '', cells).message).toContain(message);
  });
});

describe('static faults count in what is not needed as well:', () => {
  it.each<[formula: string, code: string]>([
    ['1 > 0 ? 1 : unknown', 'name-unknown'],
    ['1 > 0 ? 1 : wage', 'unit-mixed'],
    ['1 > 0 or unknown > 1', 'name-unknown'],
    ['1 < 0 and n', 'kind'],
    ['1 > 0 ? 1 : abs()', 'arity'],
  ])('%s', (formula, code) => expect(fault(formula, '', cells).code).toBe(code));
});

describe('a long formula', () => {
  it.each<[claim: string, formula: string]>([
    ['a sum of 4,999 terms', Array(4999).fill('n').join('+')],
    ['a product of 4,999 factors', Array(4999).fill('n').join('*')],
    ['1,200 conditions', Array(1200).fill('open').join(' or ')],
    ['4,990 arguments', `max(${Array(4990).fill('n').join(',')})`],
  ])('of %s is checked', (_claim, formula) => expect(check(formula, '', cells)).not.toHaveProperty('code'));
});
