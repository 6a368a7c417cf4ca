import { describe, expect, it } from 'vitest';
import { costsFinding, costTable, planCosts } from '../../../src/present/allPlans/costs';
import { namedPlans } from '../../../src/present/allPlans/plans';
import { namesAmong } from '../../../src/present/text/entryNames';
import { format, fourMedia, read, worked } from './given';

function table(text: string): string[] {
  const { model, values } = worked(text);
  const costs = planCosts(model, values)!;
  return costTable(costs, namesAmong(model.cells), format).map(({ name, amounts }) =>
    [name, ...amounts.map(({ text: shown, isLeast }) => (isLeast ? `${shown} least` : shown))].join(' | '),
  );
}

describe('costs of all plans', () => {
  it('are told for a plant where plants a year are counted', () =>
    expect(table(fourMedia)).toEqual([
      'Plugs | 0.0360 | 0.0300 | 0.0200 least | 0.0450',
      'Hands | 0.0140 | 0.0150 | 0.0275 | 0.0110 least',
      'together | 0.0500 | 0.0450 least | 0.0475 | 0.0560',
    ]));

  it('are told for a year where they are not', () => {
    const text = `
      rent [USD/year]: 100 | budget: cost | in One: 100 | in Two: 200 | in Three: 300
      pay [USD/year]: 50 | budget: cost`;
    expect(table(text)).toEqual([
      'rent | 100.00 least | 200.00 | 300.00',
      'pay | 50.00 | 50.00 | 50.00',
      'together | 150.00 least | 250.00 | 350.00',
    ]);
  });

  it('that cannot be added up make no table', () => {
    const { model, values } = worked('rent [USD/year]: 1 | budget: cost\npay [EUR/year]: 1 | budget: cost');
    expect(planCosts(model, values)).toBeUndefined();
  });
});

it('the finding names the plan that spends the least, and where plans differ most', () => {
  const { model, values } = worked();
  const plans = namedPlans(model, [0, 3]);
  expect(read(costsFinding(planCosts(model, values)!, plans, namesAmong(model.cells), format))).toBe(
    'Rockwool spends the least: 0.0450 USD per plant together. The plans differ most in Plugs: from 0.0200 USD per plant in Holder to 0.0450 USD per plant in Peat.',
  );
});
