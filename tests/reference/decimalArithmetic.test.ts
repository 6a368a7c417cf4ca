import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/decimalArithmetic.json';
import { exact } from '../../src/core/exact';
import { decimal, type Decimal } from '../../src/core/number';

// Source: General Decimal Arithmetic test cases, M. Cowlishaw (IBM); see `source` and `selection` in the checks.
type Operation = (a: Decimal, b: Decimal) => Decimal;

const operations: Readonly<Record<keyof typeof checks.cases, Operation>> = {
  add: (a, b) => exact.add(a, b),
  subtract: (a, b) => exact.subtract(a, b),
  multiply: (a, b) => exact.multiply(a, b),
  divide: (a, b) => exact.divide(a, b),
  exp: (a) => exact.exponential(a),
  ln: (a) => exact.logarithm(a),
  log10: (a) => exact.logarithm10(a),
  power: (a, b) => exact.power(a, b),
  negate: (a) => exact.negate(a),
  absolute: (a) => exact.absolute(a),
  compare: (a, b) => decimal(exact.compare(a, b)),
  smaller: (a, b) => exact.smaller(a, b),
  larger: (a, b) => exact.larger(a, b),
  floor: (a) => exact.floor(a),
  ceil: (a) => exact.ceil(a),
  round: (a) => exact.round(a, 0),
};

/** `dqadd001 1 1 -> 2` as its name, its operands and its result. */
function readCase(line: string): { id: string; operands: Decimal[]; result: Decimal } {
  const [left = '', result = ''] = line.split(' -> ');
  const [id = '', ...operands] = left.split(' ');
  return { id, operands: operands.map(decimal), result: decimal(result) };
}

const groups = Object.entries(checks.cases) as [keyof typeof checks.cases, string[]][];

/** Cases whose result differs from the published one, with what was computed. */
function differing(name: keyof typeof checks.cases, lines: readonly string[]): string[] {
  return lines.flatMap((line) => {
    const { operands, result } = readCase(line);
    const computed = operations[name](operands[0]!, operands[1] ?? decimal(0));
    return computed.eq(result) ? [] : [`${line}, computed ${computed.toString()}`];
  });
}

describe('exact arithmetic gives the published results, to the last of 34 digits:', () => {
  it.each(groups)('%s', (name, lines) => {
    expect(lines.length).toBeGreaterThan(5);
    expect(differing(name, lines)).toEqual([]);
  });

  it('in more than 700 cases', () => {
    expect(groups.reduce((sum, [, lines]) => sum + lines.length, 0)).toBeGreaterThan(700);
  });

  it.each<[id: string, a: string, b: string, result: string]>([
    ['dqdiv007', '1', '3', '0.3333333333333333333333333333333333'],
    ['dqdiv008', '2', '3', '0.6666666666666666666666666666666667'],
  ])('%s: %s / %s', (_id, a, b, result) => {
    expect(exact.divide(decimal(a), decimal(b)).toString()).toBe(result);
  });

  // The specification calls 0^0 invalid (powx001, at precision 9); JavaScript and the formulas' library say 1.
  it('differs from them in 0^0 on purpose', () => expect(exact.power(decimal(0), decimal(0)).toString()).toBe('1'));
});
