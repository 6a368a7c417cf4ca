import { expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { thinned } from '../../../../src/present/beds/bestWeeks/thinned';

it('a table shows some of many places: the ends, those it must, others evenly between', () => {
  const places = Array.from({ length: 21 }, (_, k) => decimal(k));
  expect(thinned(places, [decimal(7), decimal(10)]).join(' ')).toBe('0 3 6 7 9 10 12 15 18 20');
  expect(thinned(places.slice(0, 4), []).join(' ')).toBe('0 1 2 3');
});
