import { describe, expect, it } from 'vitest';
import { buildModel } from '../../../src/model/buildModel';
import { planNameFault, withoutPlan, withPlan, withPlanMoved, withPlanRenamed } from '../../../src/model/change/plans';
import type { Sheet } from '../../../src/model/sheet';
import { evaluatePlan } from '../../../src/model/values';
import { sheetOf } from '../table';

function results(sheet: Sheet): Record<string, string> {
  const { plans, cells } = buildModel(sheet);
  const last = cells.length - 1;
  return Object.fromEntries(plans.map((plan) => [plan.name, String(evaluatePlan(plan).numbers[last])]));
}

const two = sheetOf('x: 2 | in A: 3 | in B: 4\nr: x * 10');
const one = sheetOf('x: 2\nr: x * 10');

describe('plans', () => {
  it('a copy stands behind its original and gives the same', () => {
    const sheet = withPlan(two, 'A', ' New ') as Sheet;
    expect(results(sheet)).toEqual({ A: '30', New: '30', B: '40' });
  });

  it('the first copy of an only plan names both', () => {
    expect(results(withPlan(one, 'plan', 'New') as Sheet)).toEqual({ plan: '20', New: '20' });
  });

  it('has another name, with its numbers', () => {
    expect(results(withPlanRenamed(two, 'A', 'Today') as Sheet)).toEqual({ Today: '30', B: '40' });
    expect(results(withPlanRenamed(one, 'plan', 'Today') as Sheet)).toEqual({ Today: '20' });
    expect(withPlanRenamed(two, 'A', 'A')).toBe(two);
  });

  it('has its other name in figures of texts too', () => {
    const told = sheetOf('- Of {a; Wide} | note: Wide is {a + 1; Wide; unit}\na: 1 | in Wide: 2');
    const after = withPlanRenamed(told, 'Wide', 'Far apart') as Sheet;
    expect(after.rows[0]?.fields.get('label')).toBe('Of {a; Far apart}');
    expect(after.rows[0]?.fields.get('note')).toBe('Wide is {a + 1; Far apart; unit}');
  });

  it('is taken away, but for the last', () => {
    const left = withoutPlan(two, 'A');
    expect(results(left)).toEqual({ B: '40' });
    expect(withoutPlan(left, 'B')).toBe(left);
  });

  it('moves among the others; the first is the reference', () => {
    expect(Object.keys(results(withPlanMoved(two, 'B', -1)))).toEqual(['B', 'A']);
    expect(withPlanMoved(two, 'B', 1)).toBe(two);
  });

  it.each([
    ['A', 'plan named twice: A. Give each a name of its own.'],
    ['  ', 'plan without a name: . Give it one, in one line.'],
    ['a\nb', 'plan without a name: a\nb. Give it one, in one line.'],
  ])('cannot be called %j', (name, message) => {
    expect(planNameFault(two, name)?.message).toBe(message);
    expect(withPlan(two, 'B', name)).toMatchObject({ code: 'plan-name' });
  });
});
