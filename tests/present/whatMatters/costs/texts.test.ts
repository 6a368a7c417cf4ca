import { expect, test } from 'vitest';
import { changesCaption, costsCaption, costsFigures } from '../../../../src/present/whatMatters/costs/texts';

test.each([
  ['EUR/plant', 'Nursery', 'EUR/plant, in Nursery'],
  ['EUR/plant', '', 'EUR/plant'],
  ['', '', ''],
])('lines in "%s" of the plan "%s" are headed "%s"', (unit, plan, caption) =>
  expect(costsCaption(unit, plan)).toBe(caption),
);

test('the key names the unit of its figures where they have one', () =>
  expect(['EUR', ''].map(costsFigures)).toEqual(['today, EUR', 'today']));

test('a table of changes that are not exact yet says so', () =>
  expect([true, false].map((exact) => changesCaption('cheapest', 'Wage', exact))).toEqual([
    'Which is cheapest, by Wage',
    'Which is cheapest, by Wage (being worked out exactly …)',
  ]));
