import { expect, test } from 'vitest';
import {
  ownNumberIn,
  shareAgainText,
  sharedText,
  standingNumber,
  whoseNumber,
  type OwnNumber,
} from '../../../src/present/plans/ownNumber';
import { anyInputGroups } from '../../../src/present/results/entryGroups';
import { allPlans, format } from './given';

const lines = [
  'name,label,unit,formula,choices,plan: A,plan:B',
  ',A case,,,,,',
  'wage,Wage,EUR/h,1450.5,,,16',
  'boards,Boards,board,,,1,2',
  'heads,Heads,plant,3 * 4,,,5',
  'twice,Twice,,2 * heads,,,3 * heads',
  'plug,Plug,,1,1 one-use; 2 reusable,,2',
  '',
];
const { model } = allPlans(lines.join('\n'));
const own = (plan: number, name: string): OwnNumber => ownNumberIn(model, plan, model.cells[model.ids.get(name)!]!)!;

test('what is an input in any plan can be changed in one', () => {
  const names = anyInputGroups(model).flatMap(({ cells }) => cells.map(({ name }) => name));
  expect(names).toEqual(['wage', 'boards', 'heads', 'plug']);
});

test.each([
  [0, 'wage', '1450.5', '1,450.5 EUR/h', '', 'A uses what is shared: a number here is its alone.'],
  [1, 'wage', '16', '1,450.5 EUR/h', 'Use the shared number again', 'B has this number alone.'],
  [1, 'boards', '2', '', '', 'B has this number alone.'],
  [0, 'heads', '', 'a formula', '', 'A uses what is shared: a number here is its alone.'],
  [1, 'heads', '5', 'a formula', 'Use the shared formula again', 'B has this number alone.'],
  [1, 'plug', '2', 'one-use', 'Use the shared number again', 'B has this number alone.'],
  [
    1,
    'twice',
    '',
    'a formula',
    'Use the shared formula again',
    'B calculates it by a formula of its own: a number here takes its place.',
  ],
])('in plan %i: %s', (plan, name, standing, shared, again, whose) => {
  const found = own(plan, name);
  expect(standingNumber(found)).toBe(standing);
  expect(sharedText(found, format)).toBe(shared.replace(' EUR', '\u00a0EUR'));
  expect(shareAgainText(found)).toBe(again);
  expect(whoseNumber(found, 'AB'[plan]!)).toBe(whose);
});

test('a plan’s column is found however the file writes it; a file without plans has none', () => {
  expect(own(1, 'wage').column).toBe('plan:B');
  const bare = allPlans(['name,label,formula', ',A case,', 'a,A,1', ''].join('\n')).model;
  expect(ownNumberIn(bare, 0, bare.cells[0]!)).toBeUndefined();
});
