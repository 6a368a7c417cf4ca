import { expect, test } from 'vitest';
import { varying } from '../../../src/present/numbers/varying';
import { nursery } from '../nursery';

const { model } = nursery();
const names = (columns: readonly number[]): string =>
  [...varying(model, columns)]
    .map((id) => model.cells[id]!.name)
    .sort()
    .join(' ');

test('plans can differ in what they fill by themselves and in all that this feeds', () => {
  expect(names([0, 1])).toBe('boards hands heads margin sales');
});

test('a plan with nothing of its own differs in nothing', () => {
  const { model: alone } = nursery('name,formula\na,1\nb,2 * a\n');
  expect(varying(alone, [0]).size).toBe(0);
});
