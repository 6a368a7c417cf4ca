import { describe, expect, it } from 'vitest';
import { deepestNesting, longestFormula, scan } from '../../src/formula/scan';

function marks(formula: string): string[] {
  const tokens = scan(formula);
  if ('code' in tokens) throw new Error(tokens.message);
  return tokens.map(({ kind, text }) => `${kind} ${text}`);
}

function refusal(formula: string): string {
  const tokens = scan(formula);
  return 'code' in tokens ? `${tokens.code}: ${tokens.message}` : 'none';
}

describe('the marks of a formula', () => {
  it.each<[formula: string, found: string[]]>([
    ['', []],
    [' \t ', []],
    ['a', ['name a']],
    ['12.5', ['number 12.5']],
    ['.5', ['number .5']],
    ['1e-3*a', ['number 1e-3', 'sign *', 'name a']],
    ['a<=b', ['name a', 'sign <=', 'name b']],
    ['a<b', ['name a', 'sign <', 'name b']],
    ['a!=b', ['name a', 'sign !=', 'name b']],
    ['-x^2', ['sign -', 'name x', 'sign ^', 'number 2']],
    ['f(a, 1)', ['name f', 'sign (', 'name a', 'sign ,', 'number 1', 'sign )']],
    ['a?b:c', ['name a', 'sign ?', 'name b', 'sign :', 'name c']],
    ['2a', ['number 2', 'name a']],
    ['a1_b2', ['name a1_b2']],
    ['größe', ['name größe']],
  ])('%j', (formula, found) => expect(marks(formula)).toEqual(found));

  it('stand where they are said to', () => {
    const tokens = scan(' a  + 12');
    expect('code' in tokens ? [] : tokens.map(({ at }) => at)).toEqual([1, 4, 6]);
  });
});

describe('a foreign character is refused at its place', () => {
  it.each<[formula: string, at: number, reason: string]>([
    ['a + "b"', 5, 'Text in quotes has no place in a formula.'],
    ["a'", 2, 'Text in quotes'],
    ['`a`', 1, 'Text in quotes'],
    ['[1, 2]', 1, 'Lists, tables and indices'],
    ['a[1]', 2, 'Lists, tables and indices'],
    ['{a}', 1, 'A formula is one expression'],
    ['a; b', 2, 'A formula is one expression'],
    ['a\nb', 2, 'A formula is one expression'],
    ['a\r\nb', 2, 'A formula is one expression'],
    ['a # b', 3, 'A remark belongs in the note'],
    ['5%', 2, 'Give the cell the unit %'],
    ['=a', 1, 'without a leading sign or an assignment; to compare, write =='],
    ['a = b', 3, 'to compare, write =='],
    ['a!', 2, 'Write != for unequal'],
    ['a && b', 3, 'Write and, or, not.'],
    ['a | b', 3, 'Write and, or, not.'],
    ['~a', 1, 'Write and, or, not.'],
    ['a.b', 2, 'Names stand alone'],
    ['a\\b', 2, 'Remove it.'],
    ['a × b', 3, 'To multiply, write *.'],
    ['a ÷ b', 3, 'To divide, write /.'],
    ['a − b', 3, 'To subtract, write the plain - of the keyboard.'],
    ['a ≤ b', 3, 'Write <=.'],
    ['a ≠ b', 3, 'Write !=.'],
    ['a\u00a0b', 2, 'U+00A0. It is a space of another kind'],
    ['a\nb', 2, 'line break. A formula is one expression'],
    ['a\u0000', 2, 'Remove it.'],
    ['🌱', 1, 'Remove it.'],
  ])('%j at %d', (formula, at, reason) => {
    expect(refusal(formula)).toContain(`formula-character: not allowed in a formula at character ${at}: `);
    expect(refusal(formula)).toContain(reason);
  });
});

describe('a written number', () => {
  it.each(['123456789012345', '0.123456789012345', '1.23456789012345e-20', '00012', '1e300', '1e-300', '0e300'])(
    '%s is taken',
    (text) => expect(marks(text)).toEqual([`number ${text}`]),
  );

  it.each<[text: string, digits: number]>([
    ['1234567890123456', 16],
    ['0.1234567890123456', 16],
    ['1234567890123456789012345678901234567890', 40],
  ])('%s has too many digits', (text, digits) => {
    expect(refusal(`2 * ${text}`)).toBe(
      `literal-digits: number too long: ${text}. It has ${digits} digits; a number inside a formula may have 15. Give it an input of its own.`,
    );
  });

  it.each(['1e301', '1e-301', '10e300', '0.1e-300', '0e301', '1e99999'])('%s is out of bounds', (text) =>
    expect(refusal(`2 * ${text}`)).toBe(`literal-size: number out of bounds: ${text}. Stay between 1e-300 and 1e300.`),
  );
});

describe('length', () => {
  it(`${longestFormula} characters are read`, () => {
    expect(marks('1+'.repeat(4999) + '10')).toHaveLength(9999);
  });

  it('one more is refused', () => {
    expect(refusal('1+'.repeat(4999) + '100')).toMatch(/^formula-length: formula too long: 10001 characters/);
  });
});

const wrapped = (before: string, inner: string, after: string, times: number): string =>
  before.repeat(times) + inner + after.repeat(times);

describe(`nesting ${deepestNesting} deep is read, one more is refused:`, () => {
  it.each<[claim: string, nested: (depth: number) => string]>([
    ['brackets', (n) => wrapped('(', 'a', ')', n)],
    ['calls', (n) => wrapped('abs(', 'a', ')', n)],
    ['minus signs', (n) => wrapped('-', 'a', '', n)],
    ['minus signs with spaces', (n) => wrapped('- ', 'a', '', n)],
    ['not', (n) => wrapped('not ', '(a > 0)', '', n - 1)],
    ['powers', (n) => wrapped('a^', 'a', '', n)],
    ['choices in the last arm', (n) => wrapped('a > 0 ? b : ', 'c', '', n)],
    ['choices in the first arm', (n) => wrapped('a > 0 ? ', 'c', ' : b', n)],
    ['brackets and signs by turns', (n) => '-'.repeat(n % 2) + wrapped('-(', 'a', ')', Math.floor(n / 2))],
    ['minus signs after and', (n) => `a > 0 and ${wrapped('-', 'a', '', n)} > 0`],
  ])('%s', (_claim, nested) => {
    expect(refusal(nested(deepestNesting))).toBe('none');
    expect(refusal(nested(deepestNesting + 1))).toMatch(/^formula-depth: formula nested too deep: /);
  });

  it.each<[claim: string, formula: string]>([
    ['10,000 nested brackets', wrapped('(', '', ')', 5000)],
    ['10,000 opening brackets', '('.repeat(10_000)],
    ['10,000 closing brackets and an opening', `${')'.repeat(9000)}${'('.repeat(1000)}`],
    ['9,999 minus signs', `${'-'.repeat(9999)}1`],
  ])('%s are refused before any parser sees them', (_claim, formula) =>
    expect(refusal(formula)).toMatch(/^formula-depth/),
  );
});

describe('what stands side by side is not nested:', () => {
  it.each<[claim: string, formula: string]>([
    ['a sum', Array(1000).fill('a').join(' + ')],
    ['a sum of negatives', Array(1000).fill('-a').join(' - ')],
    ['a product of powers', Array(1000).fill('a^2').join(' * ')],
    ['a sum of brackets', Array(1000).fill('(-a)').join(' + ')],
    ['arguments that are negative', `max(${Array(1000).fill('-a').join(', ')})`],
    ['arguments that are choices', `max(${Array(500).fill('a > 0 ? 1 : 0').join(', ')})`],
    ['conditions that are denied', Array(500).fill('not (a > 0)').join(' and ')],
    ['conditions that are denied, or', Array(500).fill('not (a > 0)').join(' or ')],
    ['choices in brackets', Array(500).fill('(a > 0 ? 1 : 0)').join(' + ')],
  ])('%s', (_claim, formula) => expect(refusal(formula)).toBe('none'));
});
