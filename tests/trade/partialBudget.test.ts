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
  it('adds up lines of other units in the unit of the first', () => {
    const { lines, net } = budget(`
      sales [EUR/year]: 0 | budget: return | in Before: 0 | in After: 1000
      rent [EUR/month]: 0 | budget: cost | in Before: 0 | in After: 5
      wages [thousand*EUR/year]: 0 | budget: cost | in Before: 0.5 | in After: 0
    `);
    expect(lines.flatMap((line) => line.slice(1))).toEqual(['sales 1000', 'wages 0.5', 'rent 5']);
    expect(net).toBe('1440');
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
