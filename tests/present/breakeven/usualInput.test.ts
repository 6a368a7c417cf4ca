import { expect, test } from 'vitest';
import { usualInput } from '../../../src/present/breakeven/usualInput';
import { modelOf } from '../../model/table';
import { nursery } from '../nursery';

test('the usual input is that of the first usual question that moves the result', () => {
  expect(usualInput(nursery().model, 1, 'margin')).toBe('move_time');
});

test('without a usual question, the first with a range that moves the result, else the first with one, else any', () => {
  const ranged = modelOf('w: 1 | range: 0 2\nx: 1 | range: 0 2\ny: 2 * x');
  expect(['y', 'w', 'nothing'].map((result) => usualInput(ranged, 0, result))).toEqual(['x', 'w', 'w']);
  expect(usualInput(modelOf('w: 1\nx: 1\ny: 2 * x'), 0, 'y')).toBe('w');
});

test('a model without inputs has none', () => expect(usualInput(modelOf(''), 0, '')).toBe(''));
