import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import { typedNumber } from '../../../src/present/text/typedNumber';

function read(locale: string, typed: string): string {
  const understood = typedNumber(typed, createFormat(locale));
  return 'text' in understood ? understood.text : understood.message;
}

describe('what is typed is read as the locale writes it', () => {
  test.each([
    ['en-GB', '14.5', '14.5'],
    ['en-GB', ' 1,234,567.50 ', '1234567.50'],
    ['en-GB', '1234567', '1234567'],
    ['en-GB', '.5', '0.5'],
    ['en-GB', '5.', '5'],
    ['en-GB', '+5', '5'],
    ['en-GB', '−5', '-5'],
    ['en-GB', '1 234', '1234'],
    ['en-GB', '1e-3', '1e-3'],
    ['de-DE', '14,5', '14.5'],
    ['de-DE', '1.234.567,5', '1234567.5'],
    ['de-CH', '1’234.5', '1234.5'],
    ['fr-FR', '1 234,5', '1234.5'],
    ['fr-FR', '1\u202f234,5', '1234.5'],
    ['en-IN', '12,34,567', '1234567'],
  ])('%s %s', (locale, typed, text) => expect(read(locale, typed)).toBe(text));
});

describe('what could mean two things is refused, with what to write', () => {
  test.each([
    ['en-GB', '4,5', 'decimal comma: 4,5. Write 4.5.'],
    ['en-GB', '0,500', 'decimal comma: 0,500. Write 0.500.'],
    ['de-DE', '4.5', 'decimal point: 4.5. Write 4,5.'],
    ['en-GB', '1,23,4', 'not a number: 1,23,4. Write digits, as in 1,234.5.'],
    ['de-DE', 'zwölf', 'not a number: zwölf. Write digits, as in 1.234,5.'],
    ['en-GB', '1.2.3', 'not a number: 1.2.3. Write digits, as in 1,234.5.'],
    ['en-GB', '', 'no number: blank. Enter one, or press Escape for the last one.'],
    ['en-GB', '-', 'not a number: -. Write digits, as in 1,234.5.'],
    ['en-GB', 'Infinity', 'not a number: Infinity. Write digits, as in 1,234.5.'],
    ['en-GB', '0x10', 'not a number: 0x10. Write digits, as in 1,234.5.'],
  ])('%s %s', (locale, typed, message) => expect(read(locale, typed)).toBe(message));

  test('too many digits', () => expect(read('en-GB', '1'.repeat(40))).toContain('34 is the most'));
});

test('every number is read back from how it is shown', () => {
  const written = fc.tuple(fc.boolean(), fc.bigInt(0n, 10n ** 20n), fc.stringMatching(/^\d{0,12}$/));
  const locales = fc.constantFrom('en-GB', 'de-DE', 'fr-FR', 'en-IN', 'de-CH', 'es-ES', 'ar-EG', 'hi-IN', 'sv-SE');
  fc.assert(
    fc.property(written, locales, ([minus, whole, part], locale) => {
      const text = `${minus ? '-' : ''}${whole}${part && `.${part}`}`;
      expect(typedNumber(createFormat(locale).written(text), createFormat(locale))).toEqual({ text });
    }),
  );
});
