import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { plainNumber } from '../../../src/present/table/plainNumber';
import { createFormat } from '../../../src/present/text/numberFormat';

describe('the number that a text shows', () => {
  it.each<[text: string, locale: string, unit: string, plain: string | undefined]>([
    ['1,234.50', 'en-GB', '', '1234.50'],
    ['−1.234,5', 'de-DE', '', '-1234.5'],
    ['+5.1\u00a0%', 'en-GB', '', '5.1'],
    ['16\u00a0day', 'en-GB', 'day', '16'],
    ['1,600\u00a0days', 'en-GB', 'day', '1600'],
    ['0.62\u00a0EUR/m²', 'en-GB', 'EUR/m²', '0.62'],
    ['12\u202f345', 'fr-FR', '', '12345'],
    ['12,34,567', 'en-IN', '', '1234567'],
    ['1.235e−12', 'en-GB', '', '1.235e-12'],
    ['just above 16\u00a0day', 'en-GB', 'day', undefined],
    ['16\u00a0day', 'en-GB', '', undefined],
    ['today', 'en-GB', '', undefined],
    ['', 'en-GB', '', undefined],
  ])('%j in %s, in “%s”', (text, locale, unit, plain) => {
    expect(plainNumber(text, createFormat(locale), unit)).toBe(plain);
  });

  it.each(['en-GB', 'de-DE', 'fr-FR', 'de-CH', 'en-IN', 'ar-EG', 'sv-SE'])('is read back in %s', (locale) => {
    const format = createFormat(locale);
    for (const number of ['0', '-0.5', '1234567.125', '-98765', '1e20', '3e-12']) {
      const plain = plainNumber(format.fixed(decimal(number), 3), format);
      expect(decimal(plain!).minus(number).abs().lte('0.0005')).toBe(true);
    }
  });
});
