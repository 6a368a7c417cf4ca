import { expect, it } from 'vitest';
import { yearRows } from '../../../../src/present/theCase/years/table';
import { format, madeIn } from '../budgets';
import { foundBy } from './machine';

const made = madeIn('rent [EUR/year]: 1 | budget: cost | in A: 2 | in B: 1');

it('the years stand one by one, the one marked in which the outlay is paid back', () => {
  const rows = yearRows(foundBy(100, 80, 2, 25, 10), made, format);
  expect(
    rows.map((row) => [row.year, row.what, row.amount, row.factor, row.present, row.cumulative].join(' ')),
  ).toEqual([
    '0 outlay −100.00 1.0000 −100.00 −100.00',
    '1 gain of the year 80.00 0.8000 64.00 −36.00',
    '2 gain of the year 80.00 0.6400 51.20 15.20',
    '2 what is left 10.00 0.6400 6.40 21.60',
  ]);
  expect(rows.map(({ pays }) => pays)).toEqual([false, false, true, false]);
});
