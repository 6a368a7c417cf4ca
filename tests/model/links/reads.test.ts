import { expect, it } from 'vitest';
import { readsOf } from '../../../src/model/links/reads';
import { idOf, nursery } from '../../present/nursery';

const { model } = nursery();
const read = (name: string, plan: number): string[] =>
  readsOf(model.plans[plan]!.contents[idOf(model, name)]).map((id) => model.cells[id]!.name);

it('is what a formula names in a plan, nothing for an input or for no content', () => {
  expect(read('heads', 0)).toEqual(['heads_straight']);
  expect(read('heads', 1)).toEqual(['heads_nursery']);
  expect(read('price', 0)).toEqual([]);
  expect(readsOf(undefined)).toEqual([]);
});

it('is known of a formula with a fault too', () => {
  const { model: faulty } = nursery('name,label,formula\na,A,b + nowhere\nb,B,2\n');
  expect(readsOf(faulty.plans[0]!.contents[0])).toEqual([1]);
});
