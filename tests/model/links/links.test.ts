import { expect, it } from 'vitest';
import { linksAmong, linksOf } from '../../../src/model/links/links';
import { idOf, nursery } from '../../present/nursery';

const { model } = nursery();
const links = linksOf(model.plans);
const id = (name: string): number => idOf(model, name);
const names = (ids: readonly number[] | undefined): string =>
  (ids ?? []).map((one) => model.cells[one]!.name).join(' ');

it('an entry reads what its formula names in any plan, and feeds what names it', () => {
  expect(names(links.reads[id('heads')])).toBe('heads_straight heads_nursery');
  expect(names(links.reads[id('wage')])).toBe('');
  expect(names(links.feeds[id('wage')])).toBe('hands wage_twice');
});

it('an entry stands as far from the inputs as the longest way in any plan', () => {
  // heads_straight → heads → sales → margin
  expect(['heads_straight', 'heads', 'sales', 'margin'].map((name) => links.depths[id(name)])).toEqual([0, 1, 2, 3]);
});

it('an entry is an input where a number fills it', () => {
  expect([id('boards'), id('price'), id('heads')].map((one) => links.isInput[one])).toEqual([true, true, false]);
});

it('a link knows the plans in which it holds', () => {
  const ids = new Set(['heads_straight', 'heads_nursery', 'heads', 'sales'].map(id));
  expect(linksAmong(model.plans, links, ids)).toEqual([
    { from: id('heads_straight'), to: id('heads'), plans: [0] },
    { from: id('heads_nursery'), to: id('heads'), plans: [1] },
    { from: id('heads'), to: id('sales'), plans: [0, 1] },
  ]);
});

it('a formula that names its own entry is no link', () => {
  const circle = nursery('name,label,formula\na,A,a + 1\n').model;
  const own = linksOf(circle.plans);
  expect(own.depths).toEqual([undefined]);
  expect(linksAmong(circle.plans, own, new Set([0]))).toEqual([]);
});
