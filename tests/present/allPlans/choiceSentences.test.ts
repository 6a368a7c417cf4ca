import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { choiceBestSentences } from '../../../src/present/allPlans/choiceSentences';
import { createFormat } from '../../../src/present/text/numberFormat';
import { textOf } from '../../../src/present/text/phrase';
import { idOf, modelOf } from '../../model/table';

const english = createFormat('en-GB');
const model = modelOf('x: 1 | choices: 1 foam; 2 peat; 3 coir | label: Plug\nr: 2 * x | label: Left over');
const cell = (name: string) => model.cells[idOf(model, name)]!;

/** With each number of `each` the results of the plans A, B and C with one choice; the first is today's. */
function say(...each: readonly (readonly number[])[]): string {
  const rows = each.map((values, i) => ({
    choice: cell('x').choices[i % 3]!,
    isToday: i === 0,
    values: values.map(decimal),
  }));
  const plans = ['A', 'B', 'C'].map((letter) => ({ letter, name: `Plan ${letter}` }));
  const matter = { result: cell('r'), input: cell('x'), way: 'highest' as const, plans, today: rows[0]!.values, rows };
  const { main, more } = choiceBestSentences(matter, english);
  return `${textOf(main)} ${textOf(more)}`;
}

describe('of an input with named choices it says which plan is the best', () => {
  it('with each', () => {
    expect(say([3, 2, 1], [1, 2, 1], [1, NaN, 4])).toBe(
      'With foam, Plan A has the highest Left over; with peat, Plan B; with coir, Plan C. ' +
        'Left over today: Plan A 3, Plan B 2, Plan C 1.',
    );
  });
  it('with all alike', () => {
    expect(say([3, 2, 1], [5, 2, 1])).toContain('Plan A has the highest Left over with every choice of Plug.');
  });
  it('in a table, where there are many', () => {
    expect(say([3, 2, 1], [1, 2, 1], [3, 2, 1], [1, 2, 1], [3, 2, 1], [1, 2, 1])).toContain(
      'Which plan has the highest Left over depends on Plug; the table tells how.',
    );
  });
});
