import { expect, it } from 'vitest';
import { problem } from '../../../src/core/problem';
import { quotedParts } from '../../../src/present/text/quotedParts';

const told = (message: string, text: string): string =>
  quotedParts(problem('code', message, { text }))
    .map((part) => (part.quoted ? `[${part.text}]` : part.text))
    .join('|');

it.each([
  ['what is quoted stands alone', 'name not known: מחיר. Correct it.', 'מחיר', 'name not known: |[מחיר]|. Correct it.'],
  ['at the start', 'a: no', 'a', '[a]|: no'],
  ['a message that quotes nothing is whole', 'nothing in the file', '', 'nothing in the file'],
  ['so is one that shortens what it quotes', 'too long: ab…', 'abc', 'too long: ab…'],
])('%s', (_claim, message, text, expected) => {
  expect(told(message, text)).toBe(expected);
});
