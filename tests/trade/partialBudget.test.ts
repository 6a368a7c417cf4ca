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
  it('has all lines in the unit of the first, and adds them up', () => {
    const { lines, net } = budget(`
      sales [EUR/year]: 0 | budget: return | in Before: 0 | in After: 1000
      rent [EUR/month]: 0 | budget: cost | in Before: 0 | in After: 5
      wages [thousand*EUR/year]: 0 | budget: cost | in Before: 0.5 | in After: 0
    `);
    expect(lines.flatMap((line) => line.slice(1))).toEqual(['sales 1000', 'wages 500', 'rent 60']);
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

  it.each([
    ['in another currency', 'EUR/year'],
    ['not in money a year', 'USD'],
  ])('has no net change where a line is %s', (_claim, unit) => {
    const { lines, net } = budget(`
      sales [USD/year]: 5 | budget: return | in Before: 5 | in After: 6
      rent [${unit}]: 7 | budget: cost | in Before: 7 | in After: 8
    `);
    expect(lines.flatMap((line) => line.slice(1))).toEqual(['sales 1']);
    expect(net).toBe('NaN');
  });

  it('takes rounding in the last digits for no change', () => {
    const { lines, net } = budget(`
      sales [USD/year]: 5 | budget: return | in Before: price | in After: price / 3 * 3
      price [USD/year]: 5
    `);
    expect(lines.flatMap((line) => line.slice(1))).toEqual([]);
    expect(net).toBe('0');
  });
});
