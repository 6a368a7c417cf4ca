import { expect, test } from 'vitest';
import { plansFinding } from '../../../src/present/plans/finding';
import { comparedResults, resultRows } from '../../../src/present/plans/sideBySide';
import { textOf } from '../../../src/present/text/phrase';
import { allPlans, format, namesOf } from './given';

/** A model of one result over plans that have a number each. */
function model(label: string, numbers: readonly string[], formula = 'number'): string {
  const plans = numbers.map((_number, p) => `plan: P${p + 1}`);
  return [
    ['name,label,unit,formula,role,budget', ...plans].join(','),
    `,A case,,,,${','.repeat(plans.length)}`,
    `number,Number,EUR/year,,,,${numbers.join(',')}`,
    `one,One,EUR/year,1,,${','.repeat(plans.length)}`,
    `result,${label},EUR/year,${formula},headline,${','.repeat(plans.length)}`,
    '',
  ].join('\n');
}

function finding(text: string): string {
  const all = allPlans(text);
  const rows = resultRows(all, comparedResults(all.model, 'result'));
  // A unit keeps to its number by a space that does not break.
  return textOf(plansFinding(rows, namesOf(all.model), 'result', format)).replaceAll('\u00a0', ' ');
}

test.each([
  [
    'Margin',
    ['2000', '5000', '3000'],
    'Margin is highest in P2: 5,000 EUR a year, 3,000 EUR a year more than in P1, the reference.',
  ],
  [
    'Cost of hands',
    ['2000', '5000', '500'],
    'Cost of hands is lowest in P3: 500.00 EUR a year, 1,500 EUR a year less than in P1, the reference.',
  ],
  ['Margin', ['9000', '5000'], 'Margin is highest in P1, the reference: 9,000 EUR a year.'],
  ['Margin', ['1', '5', '5'], 'Margin is highest in P2 and P3 alike: 5.00 EUR a year.'],
  ['Margin', ['1', '5', '5', '5', '5', '5'], 'Margin is highest in P2, P3, P4 and 2 more alike: 5.00 EUR a year.'],
  ['Margin', ['7', '7'], 'Margin is the same in every plan that has a value: 7.00 EUR a year.'],
  ['Turnover', ['7000', '9000', '2000'], 'Turnover goes from 2,000 EUR a year in P3 to 9,000 EUR a year in P2.'],
])('%s of %j', (label, numbers, said) => {
  expect(finding(model(label, numbers))).toBe(said);
});

test('a reference without a value is not measured against', () => {
  expect(finding(model('Margin', ['0', '1', '2'], 'one * one / number'))).toBe(
    'Margin is highest in P2: 1.00 EUR a year.',
  );
  expect(finding(model('Margin', ['0', '0'], 'one * one / number'))).toBe(
    'Margin cannot be computed in any plan today.',
  );
});

test('one plan asks for a copy', () => {
  expect(finding(model('Margin', ['7']))).toContain('There is one plan so far. Copy it');
});

test('without a number to compare by that is said', () => {
  expect(textOf(plansFinding([], ['A', 'B'], '', format))).toBe(
    'There is no number yet by which the plans could be compared.',
  );
});
