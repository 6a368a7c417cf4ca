import { expect, it } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import { failingChecks } from '../../../src/present/page/failingChecks';
import { modelOf } from '../../model/table';

it('checks that do not hold are named with the plans in which they do not', () => {
  const model = modelOf(`
    x: 1 | in A: 1 | in B: 2
    one: x < 2 | role: check
    both: x < 0 | role: check
    none: x < 9 | role: check
    no_value: 1 / (x - 1) > 9 | role: check
  `);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  const found = failingChecks(model.cells, [0, 1], (plan, { id }) => values[plan]?.numbers[id]);
  expect(found.map(({ cell, letters }) => `${cell.name} ${letters}`)).toEqual(['one B', 'both A and B', 'no_value B']);
});
