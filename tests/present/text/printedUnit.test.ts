import { expect, test } from 'vitest';
import { printedUnit } from '../../../src/present/text/printedUnit';

test.each([
  ['EUR/m^2/year', 'EUR/m²/year'],
  ['board * week / plant', 'board·week/plant'],
  ['year^-1', 'year⁻¹'],
  ['trial_batch', 'trial batch'],
  ['', ''],
])('%s: %s', (text, printed) => expect(printedUnit(text)).toBe(printed));
