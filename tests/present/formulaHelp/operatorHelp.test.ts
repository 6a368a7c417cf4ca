import { describe, expect, it } from 'vitest';
import type { BinarySign } from '../../../src/formula/expression';
import { parse } from '../../../src/formula/parse';
import { operatorHelp } from '../../../src/present/formulaHelp/operatorHelp';
import { operators } from '../../../src/present/formulaHelp/operators';

const help = operatorHelp();
const precedenceOf = new Map(help.map(({ sign, precedence }) => [sign, precedence]));
const binary: readonly BinarySign[] = ['+', '-', '*', '/', '^', '<', '<=', '>', '>=', '==', '!=', 'and', 'or'];
const pairs = binary.flatMap((first) => binary.map((second) => [first, second] as const));
const isChain = (first: string, second: string): boolean =>
  precedenceOf.get(first) === 6 && precedenceOf.get(second) === 6;

/** The operation that is done last in a formula of names, by its sign. */
function last(formula: string): string {
  const expression = parse(formula);
  if ('code' in expression) throw new Error(expression.message);
  return expression.kind === 'binary' || expression.kind === 'unary' ? expression.sign : expression.kind;
}

describe('the help on signs', () => {
  it('has every sign once, in the order in which they are done', () => {
    const signs = help.map(({ sign }) => sign);
    expect(signs.toSorted()).toEqual([...binary, '( )', '-…', 'not', '… ? … : …'].toSorted());
    const order = help.map(({ precedence }) => precedence);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  it.each(operators)('works $example.formula out to $example.gives', ({ sign, example }) => {
    const worked = help.find((one) => one.sign === sign)?.example;
    expect(worked?.value.toString()).toBe(example.gives);
  });
});

describe('the order is that of the parser:', () => {
  it.each(pairs.filter(([first, second]) => !isChain(first, second)))('a %s b %s c', (first, second) => {
    const [early = 0, late = 0] = [precedenceOf.get(first), precedenceOf.get(second)];
    const isRightFirst = late < early || (first === '^' && second === '^');
    const expression = parse(`a ${first} b ${second} c`);
    if ('code' in expression || expression.kind !== 'binary') throw new Error('no operation of two values');
    expect([expression.right.kind, expression.left.kind]).toEqual(
      isRightFirst ? ['binary', 'name'] : ['name', 'binary'],
    );
  });

  it.each(binary)('-a %s b', (sign) => expect(last(`-a ${sign} b`)).toBe(sign === '^' ? '-' : sign));

  it.each(['and', 'or'])('not a %s b', (sign) => expect(last(`not a ${sign} b`)).toBe(sign));

  it.each(binary)('a choice comes after %s', (sign) => expect(last(`a ${sign} b ? c : d`)).toBe('choose'));

  it('brackets come first', () => expect(last('(a + b) * c')).toBe('*'));
});
