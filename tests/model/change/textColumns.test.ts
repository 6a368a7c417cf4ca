import { expect, it } from 'vitest';
import { inSystem } from '../../../src/model/change/measures';
import { inCurrency } from '../../../src/model/change/money';
import { sheetOf } from '../table';

const sheet = sheetOf(`
- A bed of {area; m} | note: {area; m^2} at {price; EUR/m^2; m}, {price; EUR} in m, EUR
area [m^2]: 8 | in m: 9
price [EUR/m^2]: 2 | note: {price; EUR}
`);
const texts = (given: typeof sheet): (string | undefined)[] =>
  ['label', 'note'].map((column) => given.rows[0]?.fields.get(column));

it('units of figures go with the units of the model; plans, words and notes of entries stay', () => {
  expect(texts(inSystem(sheet, 'us'))).toEqual([
    'A bed of {area; m}',
    '{area; ft^2} at {price; EUR/ft^2; m}, {price; EUR} in m, EUR',
  ]);
  const dollars = inCurrency(sheet, 'EUR', 'USD');
  expect(texts(dollars)[1]).toBe('{area; m^2} at {price; USD/m^2; m}, {price; USD} in m, EUR');
  expect(dollars.rows[2]?.fields.get('note')).toBe('{price; EUR}');
});

it('texts without units stay the same records', () => {
  const plain = sheetOf('- Of {area} | note: {area; unit}\narea [m^2]: 8');
  expect(inSystem(plain, 'us').rows[0]).toBe(plain.rows[0]);
});
