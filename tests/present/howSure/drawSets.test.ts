import { expect, test } from 'vitest';
import { drawSets, setHead } from '../../../src/present/howSure/drawSets';
import { selectPlans, type Whose } from '../../../src/present/results/planSelection';

test.each<[claim: string, whose: Whose, plan: number, against: number | undefined, sets: string[]]>([
  ['one plan by itself', 'plan', 0, undefined, ['Straight out']],
  ['a difference is one set without a letter', 'difference', 1, 0, ['difference']],
  ['the plan, the one compared with beside it', 'plan', 1, 0, ['B Nursery first', 'A Straight out']],
  ['the one compared with, the plan beside it', 'against', 1, 0, ['A Straight out', 'B Nursery first']],
])('%s', (_claim, whose, plan, against, sets) =>
  expect(drawSets(selectPlans(whose, plan, against), ['Straight out', 'Nursery first']).map(setHead)).toEqual(sets),
);
