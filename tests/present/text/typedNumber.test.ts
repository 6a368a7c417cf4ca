import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import { typedCount, typedNumber, writtenToEdit } from '../../../src/present/text/typedNumber';

function read(locale: string, typed: string, standing = ''): string {
  const understood = typedNumber(typed, createFormat(locale), standing);
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

describe('what another locale would read as another number is asked about', () => {
  test.each([
    ['en-GB', '1,234', 'Write 1234 if the mark parts thousands, 1.2340 if it parts decimals.'],
    ['en-GB', '1.234', 'Write 1234 if the mark parts thousands, 1.2340 if it parts decimals.'],
    ['es-ES', '12.345', 'Write 12345 if the mark parts thousands, 12,3450 if it parts decimals.'],
    ['fr-FR', '-1.234', 'Write -1234 if the mark parts thousands, -1,2340 if it parts decimals.'],
    ['es-MX', '1,234', 'Write 1234 if the mark parts thousands, 1.2340 if it parts decimals.'],
  ])('%s %s', (locale, typed, fix) => expect(read(locale, typed)).toBe(`read two ways: ${typed}. ${fix}`));

  test.each([
    ['en-GB', '0.125', '0.125'],
    ['en-GB', '1.2340', '1.2340'],
    ['en-GB', '1,234,567', '1234567'],
    ['es-ES', '1.234,5', '1234.5'],
    ['es-ES', '1 234', '1234'],
    ['es-ES', '1234', '1234'],
  ])('%s %s can be read in one way only', (locale, typed, text) => expect(read(locale, typed)).toBe(text));

  test.each([
    ['en-GB', '1,250', '1200', '1250'],
    ['en-GB', '1.250', '1.5', '1.250'],
    ['es-ES', '1.250', '10000', '1250'],
  ])('%s %s over %s, whose mark shows what is meant', (locale, typed, standing, text) =>
    expect(read(locale, typed, standing)).toBe(text),
  );

  test('over a number without that mark', () =>
    expect(read('en-GB', '1,250', '21')).toMatch(/^read two ways: 1,250\./));
});

describe('where only whole numbers can stand the mark of thousands has one meaning', () => {
  test.each([
    ['en-GB', '1,250', '1250'],
    ['es-MX', '1,250', '1250'],
    // Which writes 1250 without a mark, and 12.500 with one.
    ['es-ES', '1.250', '1250'],
    ['de-DE', '1.250', '1250'],
  ])('%s %s', (locale, typed, text) => expect(typedCount(typed, createFormat(locale))).toEqual({ text }));
});

describe('what a form puts into a field for a person', () => {
  test.each([
    ['en-GB', '1234', '1234'],
    ['en-GB', '1.125', '1.1250'],
    ['en-GB', '-1.125', '−1.1250'],
    ['en-GB', '1234.5', '1,234.5'],
    ['en-GB', '0.125', '0.125'],
    ['es-ES', '12345', '12345'],
    ['es-ES', '1.125', '1,1250'],
  ])('%s %s is %s, and reads in one way only', (locale, text, written) => {
    const format = createFormat(locale);
    expect(writtenToEdit(text, format)).toBe(written);
    expect(Number(read(locale, written))).toBe(Number(text));
  });
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
      expect(typedNumber(createFormat(locale).written(text), createFormat(locale), text)).toEqual({ text });
    }),
  );
});
