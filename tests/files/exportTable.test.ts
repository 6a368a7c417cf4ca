import { describe, expect, it } from 'vitest';
import { parseRecords } from '../../src/files/csv';
import { exportTable, guardedText } from '../../src/files/exportTable';

/** How one text entry is exported. */
function exported(text: string): string {
  return exportTable([[text]]).slice(0, -2);
}

describe('text that another program could run', () => {
  // OWASP, "CSV Injection" (owasp.org/www-community/attacks/CSV_Injection): the characters; the last two as printed.
  // NUL: OWASP ASVS requirement 1.2.10.
  it.each<[claim: string, text: string, line: string]>([
    ['=', '=1+2', `"'=1+2"`],
    ['+', '+1+2', `"'+1+2"`],
    ['-', '-1+2', `"'-1+2"`],
    ['@', '@sum(1)', `"'@sum(1)"`],
    ['tab', '\t=1+2', `"'\t=1+2"`],
    ['CR', '\r=1+2', `"'\r=1+2"`],
    ['LF', '\n=1+2', `"'\n=1+2"`],
    ['NUL', '\0=1+2', `"'\0=1+2"`],
    ['full-width =', '＝1+2', `"'＝1+2"`],
    ['plus before a number', '+5', `"'+5"`],
    ['a lone minus', '-', `"'-"`],
    ['two numbers', '-5-2', `"'-5-2"`],
    ['a number and a line break', '-5\n', `"'-5\n"`],
    ['a space before =', ' =1+2', `"' =1+2"`],
    ['a no-break space before +', '\u00a0+1+2', `"'\u00a0+1+2"`],
    ['a zero-width space before -', '\u200b-1+2', `"'\u200b-1+2"`],
    ['a byte-order mark before @', '\ufeff@sum(1)', `"'\ufeff@sum(1)"`],
    ['several of them', ' \u200b\u2060 ＝1+2', `"' \u200b\u2060 ＝1+2"`],
    ['a mark of direction before =', '\u200f=1+2', `"'\u200f=1+2"`],
    ['a space before a number with a sign', ' -5', `"' -5"`],
    ['quotes and a separator', '=1+2";=1+2', `"'=1+2"";=1+2"`],
    ['quotes and both separators', `=1+2'" ;,=1+2`, `"'=1+2'"" ;,=1+2"`],
  ])('%s', (_claim, text, line) => {
    expect(exported(text)).toBe(line);
  });

  // meth-T13: papaparse 5.7.1 with its own escaping lets these through (its issue 1149).
  it.each<[claim: string, text: string, line: string]>([
    ['a line break after the formula', '=1+1\nnote', `"'=1+1\nnote"`],
    ['a leading line feed', '\n=1+1', `"'\n=1+1"`],
    ['CRLF after the formula', '@a\r\nb', `"'@a\r\nb"`],
  ])('%s (meth-T13)', (_claim, text, line) => {
    expect(exported(text)).toBe(line);
  });

  it.each(['a;=1+2', 'a,=1+2', 'a\t=1+2', 'a\n=1+2', 'a"=1+2', `a'=1+2`])('%j stays one field in quotes', (text) => {
    expect(exported(text)).toMatch(/^"[^]*"$/);
    expect(parseRecords(exportTable([['x', text, 'y']]), ',').map(({ fields }) => fields)).toEqual([['x', text, 'y']]);
  });

  it.each([' price', '\u00a0day', 'a =1+2', '\u2212 5', ' '])('%j stays as it is', (text) => {
    expect(guardedText(text)).toBe(text);
  });

  it('a second guarding changes nothing more than quotes', () => {
    const once = parseRecords(exportTable([['=1+2']]), ',')[0]!.fields[0]!;
    expect(once).toBe(`'=1+2`);
    expect(exported(once)).toBe(`"'=1+2"`);
  });
});

describe('numbers', () => {
  const numbers = ['-5.2', '0', '-0', '12', '1e-3', '-1.5E+20', '3.141592653589793238462643383279502'];
  it.each(numbers)('%s survives', (number) => {
    const table = exportTable([[{ number }, number]]);
    expect(table).toBe(`${number},${number}\r\n`);
    expect(parseRecords(table, ',')[0]!.fields).toEqual([number, number]);
  });

  const others = ['', '=1', '1+1', '-5.2\n', '1,5', 'NaN', '+1', '0x10', '1 '];
  it.each(others)('%j as a number is our own mistake', (number) => {
    expect(() => exportTable([[{ number }]])).toThrow(`not a decimal number: ${number}`);
  });
});

describe('tables', () => {
  it('are RFC 4180 with CRLF, with quotes only where needed', () => {
    const table = exportTable([
      ['entry', 'plan: A'],
      ['Margin, a year', { number: '-5.2' }],
      ['', 'none'],
    ]);
    expect(table).toBe('entry,plan: A\r\n"Margin, a year",-5.2\r\n,none\r\n');
  });

  it('without rows are blank', () => {
    expect(exportTable([])).toBe('');
  });
});
