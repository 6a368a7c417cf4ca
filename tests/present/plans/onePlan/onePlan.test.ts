import { expect, it } from 'vitest';
import { heads, oneIn } from './sold';

it('a plan has a budget, and plants to reach where they are counted', () => {
  const one = oneIn(heads)!;
  expect(one.budget.margin.toString()).toBe('500');
  expect(one.forPlants?.needs.plants?.toFixed(2)).toBe('642.86');
  expect(one.forPlants?.each.text).toBe('EUR/head');
});

it.each([
  ['plants are not counted', 'rent [EUR/year]: 900 | budget: cost'],
  ['there are none', heads.replace('1000', '0')],
  ['the budget is not in money a year', heads.replaceAll('EUR/year', 'thousand*EUR/year')],
])('nothing is said of a plant where %s', (_where, text) => {
  expect(oneIn(text)).toBeDefined();
  expect(oneIn(text)!.forPlants).toBeUndefined();
});

it('there is no budget without lines, or where they cannot be added up', () => {
  expect(oneIn('rent [EUR/year]: 900')).toBeUndefined();
  expect(oneIn('rent [EUR/year]: 9 | budget: cost\n wages [USD/year]: 9 | budget: cost')).toBeUndefined();
});
