import { describe, expect, it } from 'vitest';
import { textParts, withFormulas, withPlanNamed } from '../../../src/model/inText/textParts';

describe('a text in pieces', () => {
  it.each([
    ['no braces at all', [{ kind: 'words', text: 'no braces at all' }]],
    ['', []],
    ['{boards}', [{ kind: 'figure', formula: 'boards', ways: [], text: '{boards}' }]],
    [
      'So { a / b ; Two plans ; unit } left',
      [
        { kind: 'words', text: 'So ' },
        { kind: 'figure', formula: 'a / b', ways: ['Two plans', 'unit'], text: '{ a / b ; Two plans ; unit }' },
        { kind: 'words', text: ' left' },
      ],
    ],
    ['an open { brace', [{ kind: 'words', text: 'an open { brace' }]],
    [
      '{{a}}',
      [
        { kind: 'words', text: '{' },
        { kind: 'figure', formula: 'a', ways: [], text: '{a}' },
        { kind: 'words', text: '}' },
      ],
    ],
  ])('%j', (text, parts) => {
    expect(textParts(text)).toEqual(parts);
  });
});

it('a change of formulas leaves words, plans and blanks alone', () => {
  const change = (formula: string): string => formula.replaceAll('a', 'z');
  expect(withFormulas('a { a + b ; a plan} and {c;a}', change)).toBe('a { z + b ; a plan} and {c;a}');
});

it('a plan is named anew where a figure tells of it, and nowhere else', () => {
  expect(withPlanNamed('Wide: {Wide ; Wide; unit}, {a;Wider}', 'Wide', 'Far $& apart')).toBe(
    'Wide: {Wide ; Far $& apart; unit}, {a;Wider}',
  );
});
