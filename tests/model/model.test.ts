import { expect, it } from 'vitest';
import { isInputInAny } from '../../src/model/model';
import { idOf, modelOf } from './table';

it('a cell is an input where one of the plans has a number for it', () => {
  const model = modelOf(`
    both: 2
    made: both * 2
    own: both * 3 | in B: 9
    r: both + made + own | in A: both`);
  const given = ['both', 'made', 'own', 'r'].filter((name) => isInputInAny(model.plans, idOf(model, name)));
  expect(given).toEqual(['both', 'own']);
  const plans = model.plans.filter(({ name }) => name === 'A');
  expect(isInputInAny(plans, idOf(model, 'own'))).toBe(false);
});
