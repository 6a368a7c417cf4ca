import { expect, it } from 'vitest';
import { costBars } from '../../../../src/present/plans/onePlan/bars';
import { format } from '../../theCase/budgets';
import { heads, oneIn } from './sold';

it('costs of a plant are drawn by kind, variable ones first, the largest first, none of 0', () => {
  const text = `${heads}
    water [EUR/year]: 5 | label: Water | budget: cost
    nothing [EUR/year]: 0 | label: Nothing | budget: cost
  `;
  const { names, looks, values, texts } = costBars(oneIn(text)!, ({ label }) => label, format);
  expect(names).toEqual(['Harvest', 'Rent', 'Water']);
  expect(looks).toEqual(['filled', 'hatched', 'hatched']);
  expect(values).toEqual([0.6, 0.9, 0.005]);
  expect(texts).toEqual(['0.600', '0.900', '0.005']);
});
