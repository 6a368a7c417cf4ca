import { expect, test } from 'vitest';
import { withUnit } from '../../../src/present/text/withUnit';

test.each([
  ['Wage', 'EUR/h', 'Wage, EUR/h'],
  ['Rent', 'EUR/m^2/year', 'Rent, EUR/m²/year'],
  ['Boards', '', 'Boards'],
])('%s in "%s" is headed %s', (label, unitText, heading) => expect(withUnit({ label, unitText })).toBe(heading));
