import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../../src/files/readModel';
import { cellNamed } from '../../../../src/model/model';
import {
  cellOptions,
  goodsOf,
  prices,
  priceUnit,
  quantities,
} from '../../../../src/present/numbers/own/stepPriceOptions';
import { modelOf } from '../../../model/table';

const { model } = readModelText(readFileSync('models/plug-media.csv', 'utf8'));
const names = (cells: readonly { readonly name: string }[]): string[] => cells.map(({ name }) => name);

it.each([
  ['plug/year', 'plug'],
  ['kg', 'kg'],
  ['board/week', 'board'],
  ['GBP/plug', undefined],
  ['GBP', undefined],
  ['h/week', undefined],
  ['%', undefined],
  ['', undefined],
  ['plant/board', undefined],
])('of %s the goods are %s', (unitText, goods) => expect(goodsOf({ unitText })).toBe(goods));

describe('of a shipped model', () => {
  it('prices are money for one of some goods, the same in every plan', () => {
    expect(names(prices(model))).toEqual(expect.arrayContaining(['seed_price', 'foam_price', 'foam_paid']));
    expect(names(prices(model))).not.toContain('wage');
    expect(names(prices(model))).not.toContain('plugs_year');
  });

  it('a price is counted by quantities of its own goods, a new one by any', () => {
    const counted = names(quantities(model, cellNamed(model, 'foam_price')));
    expect(counted).toEqual(expect.arrayContaining(['foam_sown', 'peat_sown', 'holder_bought', 'foam_order']));
    expect(counted.slice(0, 2)).toEqual(['foam_sown', 'foam_order']);
    expect(counted).not.toContain('finished_year');
    expect(names(quantities(model, undefined))).toContain('finished_year');
  });

  it('options show units', () =>
    expect(cellOptions([cellNamed(model, 'foam_sown')!], ({ label }) => label)).toEqual([
      { value: 'foam_sown', label: 'Plugs set in a year, plug/year' },
    ]));
});

it('a price is in the money of the model, and none where there is no money', () => {
  expect(priceUnit(model, { unitText: 'plug/year' })).toBe('GBP/plug');
  expect(priceUnit(modelOf('bought [plug/year]: 3'), { unitText: 'plug/year' })).toBe('');
});

it('a price that a plan fills by itself is not offered', () =>
  expect(names(prices(modelOf('p [EUR/plug]: 1 | in One: 2 | in Two: 3\nq [EUR/plug]: 1')))).toEqual(['q']));
