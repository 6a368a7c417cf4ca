import { describe, expect, it } from 'vitest';
import { namesIn, partsOf, show } from '../../src/formula/expression';
import { parse } from '../../src/formula/parse';

/** A formula as it was understood, fully bracketed, or its fault. */
function read(formula: string): string {
  const expression = parse(formula);
  return 'code' in expression ? `${expression.code}: ${expression.message}` : show(expression);
}

describe('a formula is read with every operation in brackets:', () => {
  it.each<[formula: string, understood: string]>([
    ['1', '1'],
    ['1.50', '1.5'],
    ['1e3', '1000'],
    ['.5', '0.5'],
    ['a', 'a'],
    ['((a))', 'a'],
    ['a + b * c', 'a + (b * c)'],
    ['a - b - c', '(a - b) - c'],
    ['a / b * c', '(a / b) * c'],
    ['a / b / c', '(a / b) / c'],
    ['a ^ b ^ c', 'a ^ (b ^ c)'],
    ['-a ^ 2', '-(a ^ 2)'],
    ['a ^ -b', 'a ^ -b'],
    ['a ^ -b ^ c', 'a ^ -(b ^ c)'],
    ['-a * b', '-a * b'],
    ['a * -b', 'a * -b'],
    ['--a', '--a'],
    ['a - -b', 'a - -b'],
    ['a + b > c * d', '(a + b) > (c * d)'],
    ['a > 0 and b > 0 or c > 0', '((a > 0) and (b > 0)) or (c > 0)'],
    ['a > 0 or b > 0 and c > 0', '(a > 0) or ((b > 0) and (c > 0))'],
    ['not (a > 0) and b > 0', 'not (a > 0) and (b > 0)'],
    ['not not (a > 0)', 'not not (a > 0)'],
    ['ok and not ok', 'ok and not ok'],
    ['a > 0 ? b : c', '(a > 0) ? b : c'],
    ['a > 0 ? b : c > 0 ? d : e', '(a > 0) ? b : ((c > 0) ? d : e)'],
    ['a > 0 ? (b > 0 ? c : d) : e', '(a > 0) ? ((b > 0) ? c : d) : e'],
    ['a > 0 ? b + 1 : c + 1', '(a > 0) ? (b + 1) : (c + 1)'],
    ['1 + (a > 0 ? b : c)', '1 + ((a > 0) ? b : c)'],
    ['min(a, b + 1, -c)', 'min(a, b + 1, -c)'],
    ['f()', 'f()'],
    ['a != b', 'a != b'],
    ['a == b', 'a == b'],
    ['a<=b', 'a <= b'],
    ['a>=b', 'a >= b'],
    [' a\t+ b ', 'a + b'],
    ['e + pi + i + tau', '((e + pi) + i) + tau'],
    ['m * kg * EUR', '(m * kg) * EUR'],
  ])('%s', (formula, understood) => expect(read(formula)).toBe(understood));

  it('15 digits come through as written', () => {
    for (const text of ['123456789.012345', '0.123456789012345', '1.23456789012345e-7', '999999999999999'])
      expect(Number(read(text))).toBe(Number(text));
    expect(parse('0.123456789012345')).toEqual({ kind: 'number', text: '0.123456789012345' });
  });
});

describe('what is no formula is refused, with the reason:', () => {
  it.each<[claim: string, formula: string, reason: string]>([
    ['nothing', '', 'formula-blank: formula blank'],
    ['blanks only', ' \t', 'formula-blank: formula blank'],
    ['assignment', 'a = 1', 'to compare, write =='],
    ['function definition', 'f(x) = x', 'assignment'],
    ['member access', 'a.b', 'nothing is read out of them with a point'],
    ['index access', 'a[1]', 'indices have no place'],
    ['text', '"a"', 'Text in quotes has no place'],
    ['text in single quotes', "'a'", 'Text in quotes has no place'],
    ['matrix', '[1, 2; 3, 4]', 'tables'],
    ['object', '{a: 1}', 'A formula is one expression'],
    ['range', '1:3', 'not part of a formula: 1:3'],
    ['range with a step', 'a:2:b', 'not part of a formula'],
    ['unit word after a number', '3 week', 'a sign is missing between two values: 3 week. Write * to multiply.'],
    ['unit word without a space', '3m', 'a sign is missing between two values: 3 m'],
    ['conversion to', 'a to b', 'operation not known: a to b'],
    ['conversion in', 'a in b', 'operation not known'],
    ['block', 'a; b', 'A formula is one expression'],
    ['two lines', 'a\nb', 'A formula is one expression'],
    ['comment', 'a # b', 'A remark belongs in the note'],
    ['implicit multiplication of names', 'a b', 'a sign is missing between two values: a b'],
    ['implicit multiplication by a number', '2a', 'a sign is missing between two values: 2 a'],
    ['implicit multiplication by brackets', '2(a)', 'a sign is missing between two values: 2 (a)'],
    ['implicit multiplication of brackets', '(a)(b)', 'a sign is missing between two values: (a) (b)'],
    ['implicit multiplication after a call', 'f(a)(b)', 'a sign is missing between two values'],
    ['percent', '5 %', 'divide by 100'],
    ['percent as a remainder', '5 % 3', 'divide by 100'],
    ['mod', '5 mod 3', 'operation not known: 5 mod 3'],
    ['xor', 'a xor b', 'operation not known: a xor b'],
    ['shift', 'a << b', 'operation not known: a << b'],
    ['element by element', '2.*a', 'operation not known: 2 .* a'],
    ['unary plus', '+a', 'sign not allowed before a value: +a. Leave the leading plus out.'],
    ['unary plus inside', 'a * +b', 'Leave the leading plus out.'],
    ['unary plus after a minus', '-+a', 'Leave the leading plus out.'],
    ['factorial', 'a!', 'Write != for unequal'],
    ['transpose', "a'", 'Text in quotes'],
    ['bit operations', 'a & b', 'Write and, or, not.'],
    ['hexadecimal', '0x1F', 'number not decimal: 0x1F. Write it in decimal digits.'],
    ['hexadecimal in a sum', '1 + 0xff', 'number not decimal: 0xff'],
    ['binary', '0b11', 'number not decimal: 0b11'],
    ['octal', '0o17', 'number not decimal: 0o17'],
    ['true', 'true', 'not a number: true'],
    ['false', 'a > 0 or false', 'not a number: false'],
    ['null', 'null', 'not a number: null'],
    ['undefined', 'undefined', 'not a number: undefined'],
    ['not a number', 'NaN', 'not a number: NaN'],
    ['infinity', 'a + Infinity', 'not a number: Infinity'],
    ['chained comparison', 'a < b < c', 'comparisons in a chain: a < b < c. Join two comparisons by and'],
    ['chained equality', 'a == b == c', 'comparisons in a chain'],
    ['chained comparison in an argument', 'min(1, a < b <= c ? 1 : 0)', 'comparisons in a chain'],
    ['not before a comparison', 'not a > b', 'not stands directly before a comparison: not a > b'],
    ['not not before a comparison', 'not not a > b', 'not stands directly before a comparison'],
    ['not before an equality', 'a > 0 and not b == c', 'not stands directly before a comparison'],
    ['comma', 'a, b', 'formula not readable: , b. Look at character 2.'],
    ['decimal comma', '1,5 * a', 'formula not readable: ,5 * a. In a formula decimals follow a point.'],
    ['empty brackets', '()', 'formula not readable'],
    ['bracket not closed', '(a', 'formula not readable: (a. It stops too early.'],
    ['bracket not opened', 'a)', 'formula not readable: ). Look at character 2.'],
    ['sign at the end', 'a +', 'formula not readable: a +. It stops too early.'],
    ['sign at the start', '* a', 'formula not readable: * a. Look at character 1.'],
    ['two signs', 'a * / b', 'formula not readable: / b. Look at character 5.'],
    ['choice without an else', 'a > 0 ? b', 'formula not readable: a > 0 ? b. It stops too early.'],
    // The library's own grammar: only the last arm may hold a choice without brackets.
    ['choice in the first arm without brackets', 'a > 0 ? b > 0 ? c : d : e', 'formula not readable'],
    ['choice without arms', 'a > 0 ?', 'formula not readable'],
    ['call of a value', '(a > 0 ? f : g)(2)', 'a sign is missing between two values'],
    ['number without exponent', '1e+', 'formula not readable'],
    ['thousands mark', '1 000', 'formula not readable'],
    ['optional chaining', 'a?.b', 'nothing is read out of them with a point'],
  ])('%s', (_claim, formula, reason) => {
    expect(read(formula)).toMatch(/^(formula|literal)-\w+: /);
    expect(read(formula)).toContain(reason);
  });
});

describe('size', () => {
  it('200 nested brackets are read', () => expect(read('('.repeat(200) + 'a' + ')'.repeat(200))).toBe('a'));

  it.each<[claim: string, formula: string, code: string]>([
    ['201 nested brackets', '('.repeat(201) + 'a' + ')'.repeat(201), 'formula-depth'],
    ['201 minus signs', '-'.repeat(201) + 'a', 'formula-depth'],
    ['201 powers', 'a^'.repeat(201) + 'a', 'formula-depth'],
    ['201 choices', 'a > 0 ? 1 : '.repeat(201) + '2', 'formula-depth'],
    ['10,000 nested brackets', '('.repeat(10_000) + 'a' + ')'.repeat(10_000), 'formula-length'],
    ['10,000 brackets in 10,000 characters', '('.repeat(4999) + 'aa' + ')'.repeat(4999), 'formula-depth'],
    ['10,001 characters', 'a'.repeat(10_001), 'formula-length'],
    ['a 40-digit literal', '1'.repeat(40), 'literal-digits'],
    ['16 digits', '1.234567890123456', 'literal-digits'],
  ])('%s are refused', (_claim, formula, code) => expect(read(formula).split(':')[0]).toBe(code));

  it.each<[claim: string, formula: string]>([
    ['a name of 10,000 characters', 'a'.repeat(10_000)],
    ['a sum of 4,999 terms', Array(4999).fill('a').join('+')],
    ['a product of 4,999 factors', Array(4999).fill('a').join('*')],
    ['a call of 4,990 arguments', `max(${Array(4990).fill('a').join(',')})`],
  ])('%s is read', (_claim, formula) => {
    const letters = (text: string): number => text.replaceAll(/[^a]/g, '').length;
    expect(letters(read(formula))).toBe(letters(formula));
  });

  it('a fault behind thousands of terms is still a fault', () => {
    expect(read(Array(4990).fill('a').join('+') + '+"b"')).toContain('Text in quotes');
    expect(read(Array(3000).fill('a').join(' '))).toContain('a sign is missing between two values');
    expect(read(Array(4990).fill('1').join('+') + ' +')).toContain('It stops too early.');
  });
});

describe('names', () => {
  it('are each found once, in both arms', () => {
    const expression = parse('a > 0 ? b + a : min(c, -d)');
    if ('code' in expression) throw new Error(expression.message);
    expect([...namesIn(expression)]).toEqual(['a', 'b', 'c', 'd']);
    expect(partsOf(expression)).toHaveLength(3);
  });

  it.each(['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf', 'prototype'])(
    '%s is a name like any other',
    (name) => {
      expect(parse(name)).toEqual({ kind: 'name', name });
      expect(parse(`${name}(1)`)).toEqual({ kind: 'call', name, args: [{ kind: 'number', text: '1' }] });
    },
  );
});
