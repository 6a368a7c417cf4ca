import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  divide,
  equal,
  isOne,
  multiply,
  one,
  parts,
  ratioPower,
  ratio,
  ratioFromText,
  type Ratio,
} from '../../src/core/ratio';

const written = ({ over, under }: Ratio): string => `${over}/${under}`;
const positive = fc.bigInt({ min: 1n, max: 10n ** 12n });
const ratios = fc.tuple(positive, positive).map(([over, under]) => ratio(over, under));

describe('a fraction from text', () => {
  it.each<[text: string, result: string]>([
    ['1', '1/1'],
    ['1000', '1000/1'],
    ['0.01', '1/100'],
    ['0.0254', '127/5000'],
    ['1/12', '1/12'],
    ['0.5/0.25', '2/1'],
    ['4046.8564224', '316160658/78125'],
  ])('%s is %s', (text, result) => expect(written(ratioFromText(text))).toBe(result));
});

describe('fractions', () => {
  it('are in lowest terms', () => expect(written(ratio(6n, 4n))).toBe('3/2'));

  it.each<[exponent: number, result: string]>([
    [0, '1/1'],
    [1, '2/3'],
    [3, '8/27'],
    [-2, '9/4'],
  ])('2/3 to the power %d is %s', (exponent, result) =>
    expect(written(ratioPower(ratio(2n, 3n), exponent))).toBe(result),
  );

  it('multiply and divide back', () => {
    fc.assert(
      fc.property(ratios, ratios, (a, b) => {
        expect(equal(divide(multiply(a, b), b), a)).toBe(true);
        expect(isOne(multiply(a, ratioPower(a, -1)))).toBe(true);
      }),
      { seed: 1 },
    );
  });

  it('know 1', () => expect([isOne(one), isOne(ratio(2n, 1n)), isOne(ratio(1n, 2n))]).toEqual([true, false, false]));

  it('differ where either part does', () => {
    expect([equal(ratio(1n, 2n), ratio(1n, 3n)), equal(ratio(2n, 3n), ratio(1n, 3n))]).toEqual([false, false]);
  });

  it('give both parts as exact numbers', () => {
    const { over, under } = parts(ratioFromText('0.028349523125'));
    expect(over.dividedBy(under).toString()).toBe('0.028349523125');
  });
});
