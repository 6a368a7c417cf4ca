import { expect, it } from 'vitest';
import type { Cell } from '../../../../src/model/cell';
import { byHandSentence, countedOtherwise, countText } from '../../../../src/present/plans/onePlan/byHand';
import { onePlanRows } from '../../../../src/present/plans/onePlan/table';
import { textOf } from '../../../../src/present/text/phrase';
import type { CountedByHand } from '../../../../src/trade/enterpriseBudget';
import { format } from '../../theCase/budgets';
import { heads, oneIn } from './sold';

const byRule: CountedByHand = { rising: [], staying: [] };
const named = ({ label }: Cell): string => label;

it('a line goes the other way with one press, and back with the next', () => {
  const away = countedOtherwise(byRule, 'rent', { rises: false, byHand: false });
  expect(away).toEqual({ rising: ['rent'], staying: [] });
  expect(countedOtherwise(away, 'rent', { rises: true, byHand: true })).toEqual(byRule);
  expect(countedOtherwise(away, 'harvest', { rises: true, byHand: false })).toEqual({
    rising: ['rent'],
    staying: ['harvest'],
  });
});

it('the margin stays, and the breakeven follows', () => {
  const [rule, hand] = [oneIn(heads)!, oneIn(heads, { rising: ['rent'], staying: [] })!];
  expect(hand.budget.margin.toString()).toBe(rule.budget.margin.toString());
  // With all costs rising no number of plants is too few.
  expect(hand.forPlants?.needs.plants?.toString()).toBe('0');
  expect(hand.budget.totals.variable.toString()).toBe('1500');
  const rows = onePlanRows(hand, named, format).filter(({ counted }) => counted?.byHand === true);
  expect(rows.map(({ name }) => name)).toEqual(['Rent']);
});

it('a press says what it counts a line as', () => {
  expect([true, false].map((rises) => countText({ rises, byHand: false }))).toEqual(['fixed', 'variable']);
});

it('what is counted by hand is said, and nothing where the rule agrees', () => {
  const said = (byHand: CountedByHand): string | undefined => {
    const phrase = byHandSentence(oneIn(heads, byHand)!, named);
    return phrase && textOf(phrase);
  };
  expect(said(byRule)).toBeUndefined();
  expect(said({ rising: [], staying: ['rent', 'gone'] })).toBeUndefined();
  expect(said({ rising: ['rent'], staying: [] })).toBe(
    'By hand, and not by the rule, is counted: Rent as rising with the plants.',
  );
  expect(said({ rising: ['rent'], staying: ['harvest'] })).toBe(
    'By hand, and not by the rule, these are counted: Rent as rising with the plants; Harvest as staying where it is.',
  );
});
