import { expect, test } from 'vitest';
import { headlinesReached, leaves, readersOf } from '../../../src/present/numbers/ancestry';
import { idOf, nursery } from '../nursery';

const { model } = nursery();
const named = (related: typeof leaves, name: string): string =>
  related(model, model.plans, idOf(model, name))
    .map((cell) => cell.name)
    .join(' ');

test('an entry is made from inputs, down to the last, of every plan', () => {
  expect(named(leaves, 'margin')).toBe('wage move_time boards heads_straight heads_nursery price');
  expect(named(leaves, 'wage')).toBe('');
});

test('an entry feeds those that name it, and reaches headlines', () => {
  expect(named(readersOf, 'wage')).toBe('hands wage_twice');
  expect(named(readersOf, 'heads_nursery')).toBe('heads');
  expect(named(headlinesReached, 'heads_nursery')).toBe('sales margin');
  expect(named(headlinesReached, 'margin')).toBe('');
});
