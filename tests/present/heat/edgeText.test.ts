import { expect, it } from 'vitest';
import { createFormat } from '../../../src/present/text/numberFormat';
import { edgeText } from '../../../src/present/heat/edgeText';
import { idOf, modelOf } from '../../model/table';

const model = modelOf('plants [plant]: 1\na [EUR/year]: 1\nb [EUR/plant]: 1');
const unitOf = (name: string) => model.cells[idOf(model, name)]!.unit;

it.each([
  ['a', { level: 3840.41, step: 2000, first: -10, last: 1 }, 3840.41, '3,840'],
  ['a', { level: 0, step: 2000, first: -3, last: 4 }, -6000, '−6,000'],
  ['b', { level: 0.695, step: 0.002, first: -4, last: 2 }, 0.695 - 4 * 0.002, '0.687'],
])('an edge of a key in %s is as fine as its outermost edge', (name, bands, edge, text) => {
  expect(edgeText(bands, edge, unitOf(name), createFormat('en-GB'))).toBe(text);
});
