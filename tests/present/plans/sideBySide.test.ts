import { expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import { bestAmong, comparedResults, resultRows, rowSaid } from '../../../src/present/plans/sideBySide';
import { text as nurseryText } from '../nursery';
import { allPlans, namesOf } from './given';

const all = allPlans();
const rows = resultRows(all, comparedResults(all.model, 'margin'));
const row = (name: string) => rows.find(({ cell }) => cell.name === name)!;

test('the headlines stand side by side, in the order of the file; without any, the result asked about', () => {
  expect(rows.map(({ cell }) => cell.name)).toEqual(['heads', 'margin', 'plant_cost', 'plug', 'pole']);
  const plain = allPlans(nurseryText.replaceAll('headline', ''));
  expect(comparedResults(plain.model, 'margin').map(({ name }) => name)).toEqual(['margin']);
  expect(comparedResults(plain.model, 'nothing')).toEqual([]);
});

test('each value is told against the reference, and the best in words by which way is better', () => {
  expect(row('margin').values).toEqual([
    { text: '2,000', difference: '', best: '' },
    { text: '4,000', difference: '+2,000', best: '' },
    { text: '6,000', difference: '+4,000', best: 'most' },
  ]);
  expect(row('plant_cost').values.map(({ text, best }) => [text, best])).toEqual([
    ['0.600', ''],
    ['0.300', ''],
    ['0.200', 'least'],
  ]);
});

test('of what is neither earned nor paid nothing is best', () => {
  expect(row('heads').values.map(({ best }) => best)).toEqual(['', '', '']);
});

test('a choice stands in its words, without a difference or bars', () => {
  expect(row('plug').values.map(({ text, difference }) => text + difference)).toEqual([
    'one-use',
    'one-use',
    'reusable',
  ]);
  expect(row('plug').numbers).toBeUndefined();
});

test('a plan without a value says so, and the others are not measured against it', () => {
  expect(row('pole').values.map(({ text, difference }) => [text, difference])).toEqual([
    ['no value', ''],
    ['1', ''],
    ['0.5', ''],
  ]);
});

test.each([
  [[1, 3, 2], 'higher', [1]],
  [[1, 3, 2], 'lower', [0]],
  [[3, 3, 2], 'higher', [0, 1]],
  [[2, 2], 'higher', []],
  [[2], 'higher', []],
  [[NaN, 5, 4], 'lower', [2]],
  [[NaN, NaN], 'lower', []],
] as const)('of %j the best that is %s is at %j', (numbers, way, best) => {
  expect([...bestAmong(numbers.map(decimal), way)]).toEqual(best);
});

test('a picture is said in words', () => {
  expect(rowSaid(row('margin'), namesOf(all.model))).toBe(
    'Margin, EUR/year: Low 2,000; Middle 4,000; High 6,000, most.',
  );
});
