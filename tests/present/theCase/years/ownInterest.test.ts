import { expect, it } from 'vitest';
import { evaluatePlan } from '../../../../src/model/values';
import { ownInterest } from '../../../../src/present/theCase/years/ownInterest';
import { modelOf } from '../../../model/table';

function interestIn(text: string): string | undefined {
  const model = modelOf(text);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  return ownInterest(model, values, 0)?.toString();
}

const boards = 'boards [EUR/year]: 900 EUR * capital_recovery(interest, 8 year)';

it('is the value of the entry that a price is repaid with, typed or calculated', () => {
  expect(interestIn(`interest [%/year]: 6.5\n${boards}`)).toBe('6.5');
  expect(interestIn(`base [%/year]: 4\ninterest [%/year]: base * 2\n${boards}`)).toBe('8');
});

it('is not known where nothing is repaid, where its unit is another, or where it cannot be a rate', () => {
  expect(interestIn('interest [%/year]: 6.5')).toBeUndefined();
  expect(interestIn(`interest [1/year]: 0.065\n${boards}`)).toBeUndefined();
  expect(interestIn(`interest [%/year]: -200\n${boards}`)).toBeUndefined();
});
