import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { cellNamed } from '../../src/model/model';
import { evaluatePlan } from '../../src/model/values';
import { breakevenPrice, enterpriseBudget, planBreakeven } from '../../src/trade/enterpriseBudget';
import { modelOf, planOf } from '../model/table';

function budget(text: string, sold = 'sold') {
  const model = modelOf(text);
  expect(model.faults).toEqual([]);
  const plan = planOf(model);
  const made = enterpriseBudget({ cells: model.cells, plan, values: evaluatePlan(plan) }, cellNamed(model, sold));
  const names = (list: 'returns' | 'otherReturns' | 'variable' | 'fixed'): string =>
    made[list].map(({ cell, amount }) => `${cell.name} ${amount.toString()}`).join(', ');
  return { made, names };
}

const farm = `
  weeks [week/year]: 50
  sown [plant/week]: 220
  kept [%]: 100
  finished [plant/week]: sown * kept * 200 / 220
  sold [plant/year]: finished * weeks
  price [EUR/plant]: 0.5
  places [plant]: 4000
  place_price [EUR/plant/year]: 0.1
  seed_price [EUR/plant]: 0.05
  sales [EUR/year]: sold * price | budget: return
  grant [EUR/year]: 100 | budget: return
  seed [EUR/year]: sown * seed_price * weeks | budget: cost
  holders [EUR/year]: places * place_price | budget: cost
  rent [EUR/month]: 100 | budget: cost
`;

describe('an enterprise budget', () => {
  it('takes a line as variable where it moves with the plants sold, moved or sown', () => {
    const { made, names } = budget(farm);
    expect(names('returns')).toBe('sales 5000');
    expect(names('otherReturns')).toBe('grant 100');
    expect(names('variable')).toBe('seed 550');
    expect(names('fixed')).toBe('holders 400, rent 1200');
    expect([made.overVariable, made.margin].map(String)).toEqual(['4550', '2950']);
  });

  it('takes a line as fixed that a guarantee holds where it is', () => {
    const { names } = budget(`
      sold [plant/year]: 1000
      time [h/plant]: 0.01
      hours [h/year]: max(sold * time, least)
      least [h/year]: 40
      wage [EUR/h]: 10
      hands [EUR/year]: hours * wage | budget: cost
      more_hands [EUR/year]: sold * time * wage | budget: cost
    `);
    expect(names('fixed')).toBe('hands 400');
    expect(names('variable')).toBe('more_hands 100');
  });

  it('has no sums where a line cannot be computed', () => {
    const { made } = budget(`
      sold [plant/year]: 1000
      none: 0
      amount [EUR/year]: 5
      rent [EUR/year]: 5 | budget: cost
      hands [EUR/year]: amount / none | budget: cost
    `);
    expect(made.totals.fixed.isNaN()).toBe(true);
    expect(made.margin.isNaN()).toBe(true);
  });

  it('takes every cost as fixed where plants are not counted', () => {
    expect(budget(farm, 'nothing').names('variable')).toBe('');
  });
});

describe('the breakeven of a plan', () => {
  it('is the price that covers all costs, and the plants at which today’s price does', () => {
    const { made } = budget(farm);
    const found = planBreakeven(made, decimal(10_000));
    // (550 + 400 + 1,200 − 100) ÷ 10,000, and 1,500 ÷ (0.5 − 0.055).
    expect(breakevenPrice(found, decimal(10_000)).toString()).toBe('0.205');
    expect(found.plants?.toFixed(3)).toBe('3370.787');
  });

  it('has no number of plants where a plant costs more than it brings', () => {
    const totals = { returns: 100, otherReturns: 0, variable: 100, fixed: 5 };
    const exactly = Object.fromEntries(Object.entries(totals).map(([name, n]) => [name, decimal(n)]));
    expect(planBreakeven({ totals: exactly as never }, decimal(10)).plants).toBeUndefined();
  });

  it('needs no plants where other returns pay the fixed costs', () => {
    const totals = { returns: 100, otherReturns: 8, variable: 50, fixed: 5 };
    const exactly = Object.fromEntries(Object.entries(totals).map(([name, n]) => [name, decimal(n)]));
    expect(planBreakeven({ totals: exactly as never }, decimal(10)).plants?.toString()).toBe('0');
  });

  it('follows from NaN as NaN, not as a number', () => {
    const totals = { returns: 100, otherReturns: 0, variable: NaN, fixed: 5 };
    const exactly = Object.fromEntries(Object.entries(totals).map(([name, n]) => [name, decimal(n)]));
    expect(breakevenPrice(planBreakeven({ totals: exactly as never }, decimal(10)), decimal(10)).isNaN()).toBe(true);
  });
});
