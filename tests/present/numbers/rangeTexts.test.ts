import { expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import { cellNamed } from '../../../src/model/model';
import { rangeOffer } from '../../../src/present/numbers/rangeTexts';
import { createFormat } from '../../../src/present/text/numberFormat';
import { modelOf } from '../../model/table';

const cell = cellNamed(modelOf('wage [EUR/h]: 14 | range: 13 17'), 'wage')!;

test('a number outside its range is offered a range as wide as before, with its width', () => {
  expect(rangeOffer(cell, decimal(29), createFormat('en'))).toEqual({
    outside: 'Outside its range of 13 to 17.',
    fit: 'Make it 25.1 to 32.9',
    asWide: 'as wide as before, ±13 %',
  });
});

test.each([13, 15, 17])('%d, within it, is offered none', (value) =>
  expect(rangeOffer(cell, decimal(value), createFormat('en'))).toBeUndefined(),
);
