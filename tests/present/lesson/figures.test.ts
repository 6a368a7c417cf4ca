import { expect, it } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import { createFormat } from '../../../src/present/text/numberFormat';
import { givenFigures, resultFigures, type Figure } from '../../../src/present/lesson/figures';
import { modelOf } from '../../model/table';

const model = modelOf(`
  boards [board]: 1250 | label: Boards
  weeks [week]: | label: Weeks | in One: 3 | in Two: 2.50
  room [in^2/plant]: 16 | label: Room
  way: 1 | label: Way | in One: 2 | choices: 1 by hand; 2 by machine
  flow [board/week]: boards / weeks | label: Flow
  need [board/week]: 450 | label: Need
  enough: flow > need | label: Too slow | role: check
  broken [week]: weeks / 0 | label: Broken
`);
const values = model.plans.map((plan) => evaluatePlan(plan));
const english = createFormat('en-GB');
const written = (figures: readonly Figure[]): string[] =>
  figures.map(({ label, values: each, unit }) => `${label}: ${each.join(', ')} ${unit}`.trim());

it('what is given stands as it was typed, for each plan', () => {
  expect(written(givenFigures(model, values, english))).toEqual([
    'Boards: 1,250, 1,250 board',
    'Weeks: 3, 2.50 week',
    'Room: 16, 16 in²/plant',
    'Way: by machine, by hand',
    'Need: 450, 450 board/week',
  ]);
});

it('results are those of the values, a check in words, and what cannot be has no value', () => {
  expect(written(resultFigures(model, values, english))).toEqual([
    'Flow: 416.7, 500 board/week',
    'Too slow: warning, not so',
    'Broken: no value, no value week',
  ]);
});
