import { describe, expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import { evaluatePlan } from '../../../src/model/values';
import type { ShownValue } from '../../../src/present/numbers/shownValue';
import { differenceText, valueText } from '../../../src/present/numbers/valueText';
import { createFormat } from '../../../src/present/text/numberFormat';
import { modelOf } from '../../model/table';

const model = modelOf(`
  boards [board]: | in A: 3 | in B: 3.0
  weeks [week]: | in A: 1.50 | in B: 4
  flow [board/week]: boards / weeks
  need [board/week]: 1
  slow: flow < need
  late: flow < need | role: check
  far [week]: 4
  gap [board/week]: boards / (weeks - far)
`);
const values = model.plans.map((plan) => evaluatePlan(plan));
const english = createFormat('en-GB');
const cellOf = (name: string) => model.cells[model.ids.get(name)!]!;

function shownOf(name: string, plan: number): ShownValue {
  const { id } = cellOf(name);
  const { numbers, errors } = values[plan]!;
  return { number: numbers[id]!, error: errors.get(id), content: model.plans[plan]!.contents[id] };
}

describe('a value is read', () => {
  test.each([
    ['an input with all digits', 'weeks', false, '1.5'],
    ['a truth in a word', 'slow', false, 'no'],
    ['a check as a warning', 'late', false, 'warning'],
  ])('%s', (_claim, name, full, said) => expect(valueText(shownOf(name, 0), cellOf(name), full, english)).toBe(said));

  test('as a calculated number rounded, and in full with all 34 digits', () => {
    const third = modelOf('a: 1 / 3');
    const { numbers } = evaluatePlan(third.plans[0]!);
    const shown = { number: numbers[0]!, error: undefined, content: third.plans[0]!.contents[0] };
    expect(valueText(shown, third.cells[0]!, false, english)).toBe('0.3333');
    expect(valueText(shown, third.cells[0]!, true, english)).toBe(`0.${'3'.repeat(34)}`);
  });

  test('as none where there is none', () =>
    expect(valueText(shownOf('gap', 1), cellOf('gap'), false, english)).toBe('no value'));
});

describe('the difference of two plans', () => {
  test.each([
    ['is none of equal numbers, however they are written', 'boards', 'same'],
    ['has its sign', 'weeks', '+2.5'],
    ['has the digits that its unit calls for', 'flow', '−1.25'],
    ['is blank for a truth', 'slow', ''],
    ['is blank where one plan has no value', 'gap', ''],
  ])('%s', (_claim, name, said) =>
    expect(differenceText(shownOf(name, 0), shownOf(name, 1), cellOf(name), english)).toBe(said),
  );
});

test('a plan that the model has no longer has no value', () => {
  const gone: ShownValue = { number: decimal(NaN), error: undefined, content: undefined };
  expect(valueText(gone, cellOf('gap'), false, english)).toBe('no value');
});
