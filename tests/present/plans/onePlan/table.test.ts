import { expect, it } from 'vitest';
import { onePlanRows } from '../../../../src/present/plans/onePlan/table';
import { format } from '../../theCase/budgets';
import { heads, oneIn } from './sold';

const rows = (text: string): string[] =>
  onePlanRows(oneIn(text)!, ({ label }) => label, format).map(({ kind, name, year, plant }) =>
    [kind, name, year, plant].filter(Boolean).join(' | '),
  );

it('the lines stand in the order of the trade with their sums, without lines of 0', () => {
  expect(rows(heads)).toEqual([
    'head | Returns with the plants',
    'line | Sales | 2,000 | 2.00',
    'sum | all returns | 2,000 | 2.00',
    'head | Variable costs, which rise with each plant',
    'line | Harvest | 600 | 0.60',
    'sum | all variable costs | 600 | 0.60',
    'result | Margin over variable costs | 1,400 | 1.40',
    'head | Fixed costs, which stay as they are',
    'line | Rent | 900 | 0.90',
    'sum | all fixed costs | 900 | 0.90',
    'result | Margin | 500 | 0.50',
  ]);
});

it('a line without a value says so, and there is no column of a plant where none is counted', () => {
  expect(rows('none: 0\n x [EUR/year]: 5\n rent [EUR/year]: x / none | label: Rent | budget: cost')).toContain(
    'line | Rent | no value',
  );
});
