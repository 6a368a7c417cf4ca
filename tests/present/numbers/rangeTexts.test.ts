import { expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import { cellNamed } from '../../../src/model/model';
import { rangeOffer } from '../../../src/present/numbers/rangeTexts';
import { createFormat } from '../../../src/present/text/numberFormat';
import { modelOf } from '../../model/table';

const cell = cellNamed(modelOf('wage [EUR/h]: 14 | range: 13 17'), 'wage')!;

test('a number outside its range is offered a range as wide as before, with its width', () => {
  expect(rangeOffer(cell, decimal(29), '', createFormat('en'))).toEqual({
    said: 'Outside its range of 13 to 17.',
    canStay: false,
    fit: 'Make it 25.1 to 32.9',
    asWide: 'as wide as before, ±13 %',
    ends: { low: '25.1', high: '32.9' },
  });
});

test.each([13, 15, 17])('%d, within it, is offered none', (value) =>
  expect(rangeOffer(cell, decimal(value), 'entered 3 May 2026', createFormat('en'))).toBeUndefined(),
);

test.each([
  [16, 'Make it 13.9 to 18.1'],
  [15, ''],
])('%d, within a range that came with the model, may keep it or have it moved', (value, fit) => {
  const source = 'entered 3 May 2026; range: invented for the sample farm';
  expect(rangeOffer(cell, decimal(value), source, createFormat('en'))).toMatchObject({
    said: 'Its range of 13 to 17 is still taken over.',
    canStay: true,
    fit,
  });
});
