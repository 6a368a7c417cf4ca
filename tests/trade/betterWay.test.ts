import { describe, expect, it } from 'vitest';
import { betterWay, isGain } from '../../src/trade/betterWay';
import { idOf, modelOf } from '../model/table';

function cellOf(unit: string, label: string, budget: string) {
  const model = modelOf(`x [${unit}]: 1 | label: ${label} | budget: ${budget}`);
  return model.cells[idOf(model, 'x')]!;
}

describe('better is', () => {
  it.each([
    ['lower', 'a cost of the budget, whatever it is called', 'EUR/year', 'Plugs', 'cost'],
    ['higher', 'a return of the budget', 'EUR/year', 'Heads sold', 'return'],
    ['lower', 'money that is called a cost', 'EUR/plant', 'Cost of a finished plant', ''],
    ['lower', 'all costs of a year', 'EUR/year', 'Costs', ''],
    ['higher', 'a margin', 'EUR/year', 'Margin', ''],
    ['higher', 'a margin for each', 'EUR/board/week', 'Margin a board-week', ''],
    ['higher', 'a margin over costs', 'EUR/year', 'Margin over costs', ''],
    ['higher', 'costs that are saved', 'EUR/year', 'Costs saved', ''],
    ['lower', 'a cost in Spanish', 'EUR/plant', 'Costo por planta', ''],
    ['lower', 'a cost as Spain writes it', 'EUR/year', 'Coste total', ''],
    ['higher', 'a margin in Spanish', 'EUR/year', 'Margen sobre costos variables', ''],
    ['higher', 'a gain in Spanish', 'EUR/year', 'Utilidad del año', ''],
    [undefined, 'other money, of which nobody knows', 'EUR/year', 'Left over', ''],
    [undefined, 'what is no money', 'plant/week', 'Finished plants a week', ''],
    [undefined, 'no money, though it is called a cost', 'h/week', 'Cost in hours', ''],
    [undefined, 'plants for each unit of money', 'plant/EUR', 'Plants at this cost', ''],
  ])('%s: %s', (way, _claim, unit, label, budget) => expect(betterWay(cellOf(unit, label, budget))).toBe(way));
});

describe('more of it pays', () => {
  it.each([
    [true, 'of a margin', 'EUR/year', 'Margin', ''],
    [false, 'but not of a single return', 'EUR/year', 'Contribution of heads', 'return'],
    [false, 'nor of a margin in hours', 'h/week', 'Margin', ''],
  ])('%s %s', (pays, _claim, unit, label, budget) => expect(isGain(cellOf(unit, label, budget))).toBe(pays));
});
