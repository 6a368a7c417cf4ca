import { describe, expect, it } from 'vitest';
import { evaluatePlan } from '../../src/model/values';
import { partialBudget } from '../../src/trade/partialBudget';
import { modelOf, planOf } from '../model/table';

function budget(text: string) {
  const model = modelOf(text);
  const [from, to] = [planOf(model, 'Before'), planOf(model, 'After')];
  const { netChange, ...lists } = partialBudget(model.cells, evaluatePlan(from), evaluatePlan(to));
  const lines = Object.entries(lists).map(([name, list]) => [
    name,
    ...list.map(({ cell, value }) => `${cell.name} ${value.toString()}`),
  ]);
  return { lines, net: netChange.toString() };
}

describe('a partial budget', () => {
  // econ-PB1: salad greens instead of specialty beans, per bed: net −37.37 (studylib.net/doc/15970091, Partial Budget
  // Analysis; the sheet of Iowa State Extension AgDM C6-10).
  it('of salad greens for beans nets −37.37', () => {
    const { lines, net } = budget(
      `
      greens [USD/year]: 0 | budget: return | in Before: 0 | in After: 150
      beans [USD/year]: 0 | budget: return | in Before: 360 | in After: 0
      beans_labour [USD/year]: 0 | budget: cost | in Before: 18.25 * 10 | in After: 0
      beans_inputs [USD/year]: 0 | budget: cost | in Before: 26.66 | in After: 0
      greens_labour [USD/year]: 0 | budget: cost | in Before: 0 | in After: 2.8 * 10
      greens_inputs [USD/year]: 0 | budget: cost | in Before: 0 | in After: 8.53
    `.replace(/(\d[\d.]*) \* 10/g, (_, hours: string) => String(Number(hours) * 10)),
    );
    expect(lines).toEqual([
      ['addedReturns', 'greens 150'],
      ['reducedCosts', 'beans_labour 182.5', 'beans_inputs 26.66'],
      ['addedCosts', 'greens_labour 28', 'greens_inputs 8.53'],
      ['reducedReturns', 'beans 360'],
    ]);
    expect(net).toBe('-37.37');
  });

  // econ-PB2: corn for dry beans on 100 acres nets −4,500 (Delta Farm Press, Partial budget is simple, useful tool).
  it('of corn for dry beans nets −4,500', () => {
    const text = `
      corn [USD/year]: 97500 | budget: return | in Before: 0 | in After: 97500
      beans [USD/year]: 88000 | budget: return | in Before: 88000 | in After: 0
      beans_cost [USD/year]: 55000 | budget: cost | in Before: 55000 | in After: 0
      corn_cost [USD/year]: 69000 | budget: cost | in Before: 0 | in After: 69000
    `;
    expect(budget(text).net).toBe('-4500');
  });

  it('lists a line that changes in part by its change, and one that stays not at all', () => {
    const { lines, net } = budget(`
      sales [USD/year]: 5 | budget: return | in Before: 5 | in After: 3
      rent [USD/year]: 7 | budget: cost
      seed [USD/year]: 2 | budget: cost | in Before: 2 | in After: 2.5
      note [USD/year]: 1 | in Before: 1 | in After: 9
    `);
    expect(lines.flatMap((line) => line.slice(1))).toEqual(['seed 0.5', 'sales 2']);
    expect(net).toBe('-2.5');
  });

  it('has no net change where a line cannot be computed', () => {
    const { net } = budget(`
      none: 0
      sales [USD/year]: 5 | budget: return | in Before: 5 | in After: rent / none
      rent [USD/year]: 7 | budget: cost | in Before: 7
    `);
    expect(net).toBe('NaN');
  });
});
