import { describe, expect, it } from 'vitest';
import { oddsRows, oddsSentences, tooFewSentence, type OddsContext } from '../../../src/present/allPlans/odds';
import { idOf } from '../../model/table';
import { format, read, worked } from './given';

const { model } = worked();
const result = model.cells[idOf(model, 'cost_plant')]!;

function matter(odds: Partial<OddsContext['odds']>, leftOut: OddsContext['leftOut'] = []): OddsContext {
  const found = {
    draws: 1000,
    failed: 0,
    shares: [0.61, 0.3, 0.09],
    ties: 0,
    means: [0.05, 0.052, 0.06],
    certain: false,
  };
  const plans = ['Foam', 'Peat', 'Holder'].map((name, p) => ({ letter: 'ACB'[p]!, name }));
  return { result, way: 'lowest', plans, leftOut, odds: { ...found, ...odds } };
}

describe('how often each plan is the best of all', () => {
  it.each<[string, OddsContext, string, string]>([
    [
      'best first',
      matter({}),
      'Of all 3 plans Foam has the lowest Cost of a plant in 61 of 100 draws, Peat in 30, Holder in 9.',
      '',
    ],
    [
      'whoever it is',
      matter({ shares: [0.003, 0.9, 0.097] }),
      'Of all 3 plans Peat has the lowest Cost of a plant in 90 of 100 draws, Holder in 10, Foam in fewer than 1.',
      '',
    ],
    [
      'every draw',
      matter({ shares: [1, 0, 0] }),
      'Of all 3 plans Foam has the lowest Cost of a plant in every draw.',
      '',
    ],
    [
      'ties and rounding',
      matter({ shares: [0.335, 0.335, 0.33], ties: 0.2 }),
      'Of all 3 plans Foam has the lowest Cost of a plant in 34 of 100 draws, Peat in 34, Holder in 33.',
      'Two or more are alike in 20 of 100 draws; such a draw is shared out among them. Rounded to whole draws they do not add up to 100.',
    ],
    [
      'what is left out',
      matter({ failed: 100 }, [{ letter: 'D', name: 'Rockwool' }]),
      'Of all 3 plans Foam has the lowest Cost of a plant in 61 of 100 draws, Peat in 30, Holder in 9.',
      'In 10 of 100 draws one of the 3 cannot be computed; everything here speaks of the rest. Rockwool has no value today and is left out.',
    ],
    [
      'no range',
      matter({ certain: true, shares: [0, 1, 0] }),
      'Peat has the lowest Cost of a plant of all 3 plans, and no entry with a range moves it in any.',
      '',
    ],
    [
      'no draw',
      matter({ failed: 1000, shares: [NaN, NaN, NaN] }),
      'In no draw can Cost of a plant be computed in every plan.',
      '',
    ],
  ])('%s', (_claim, given, main, more) => {
    const said = oddsSentences(given);
    expect([read(said.main), read(said.more)]).toEqual([main, more]);
  });
});

it('stands in a table in the order of the plans', () =>
  expect(oddsRows(matter({}), format).map(({ plan, often, mean }) => [plan.letter, often, mean])).toEqual([
    ['A', '61.0', '0.0500'],
    ['C', '30.0', '0.0520'],
    ['B', '9.0', '0.0600'],
  ]));

it('a result that one plan alone has is no question', () =>
  expect(read(tooFewSentence(result))).toBe(
    'Cost of a plant has a value in fewer than two plans today, so there is no best of several.',
  ));
