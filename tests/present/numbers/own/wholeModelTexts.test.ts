import { expect, it } from 'vitest';
import { currencyOptions, currencySaid, measuresSaid } from '../../../../src/present/numbers/own/wholeModelTexts';
import { textOf } from '../../../../src/present/text/phrase';

it('offers every currency but the present one, with its name', () => {
  const options = currencyOptions('EUR');
  expect(options.some(({ value }) => value === 'EUR')).toBe(false);
  expect(options.find(({ value }) => value === 'USD')?.label).toBe('USD, US Dollar');
  expect(options.length).toBeGreaterThan(140);
});

it.each([
  [currencySaid('EUR', 'USD', 34, undefined), 'USD stands for EUR in 34 entries now. Their figures stay as they were.'],
  [currencySaid('EUR', 'USD', 1, '1.08'), 'USD stands for EUR in one entry now. Their figures are multiplied by 1.08.'],
  [measuresSaid('us', 4), 'Now 4 entries are in US units, by exact factors.'],
  [measuresSaid('metric', 1), 'Now one entry is in metric units, by exact factors.'],
])('%#', (phrase, text) => expect(textOf(phrase)).toBe(text));
