import { describe, expect, it } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import { farmResults } from '../../../src/present/setUp/farmResults';
import { greyFigures } from '../../../src/present/setUp/greyFigures';
import { asksOf } from '../../../src/present/setUp/farmFields';
import { askedFigures } from '../../../src/trade/farm/askedFigures';
import { farmQuestions, type FarmAnswers } from '../../../src/trade/farm/answers';
import { answersOf, farmOf, own } from '../../trade/farm/farm';
import { british } from './typed';

function resultsOf(answers: FarmAnswers) {
  const model = farmOf(answers);
  const values = model.plans.map((plan) => evaluatePlan(plan));
  const results = farmResults(answers.question, model, values, british);
  const sentences = results.sentences.map((sentence) => sentence.replaceAll('\u00a0', ' '));
  return { ...results, sentences, grey: greyFigures(answers, model, values, british) };
}

describe('what follows from the answers', () => {
  it('shows both plans and what lies between them', () => {
    const { plans, rows } = resultsOf(answersOf(own, { currency: 'USD' }));
    expect(plans).toEqual(['Straight to finishing', 'Nursery first']);
    const { numbers, apart, ...shown } = rows[0]!;
    expect([...numbers, apart].map((number) => number?.round().toNumber())).toEqual([1152, 1560, 408]);
    expect(shown).toEqual({
      label: 'Finished plants a week',
      unit: 'plant/week',
      values: ['1,152', '1,560'],
      difference: '+408',
    });
    expect(rows.map(({ label }) => label)).toEqual([
      'Finished plants a week',
      'Hours needed',
      'Hours paid to the hire',
      'Margin',
    ]);
  });

  it('says what the nursery brings, that crowding costs nothing yet, and how much is not one’s own', () => {
    const { sentences } = resultsOf(answersOf(own, { currency: 'USD' }));
    expect(sentences[0]).toMatch(/^“Nursery first” adds [\d,]+ USD a year to the margin\.$/);
    expect(sentences[1]).toMatch(/^By the sample’s guess of how plants spread, leaves touch for the last \d+ days/);
    expect(sentences[2]).toMatch(/^\d+ of the \d+ figures that this rests on are not yours yet/);
  });

  it('says so where the places hold no batch', () => {
    const said = (boards: number): string[] =>
      resultsOf(answersOf({ ...own, boards, interval: 1 })).sentences.filter((text) =>
        text.startsWith('Nothing grows'),
      );
    // A batch of one plant a day, 42 days on boards of its own, needs 42 places; with a nursery, 14 and 28.
    expect(said(42)).toEqual([]);
    expect(said(41)).toHaveLength(2);
    expect(said(41)[1]).toMatch(/^Nothing grows in “Nursery first”: even a batch of one plant/);
  });

  it('names the plug that costs least', () => {
    const { sentences, rows } = resultsOf(answersOf({}, { question: 'plug' }));
    expect(sentences[0]).toBe(
      '“Foam cube” costs least for a finished plant: 0.000323 GBP per plant less than “Peat plug”.',
    );
    expect(rows[0]!.values).toHaveLength(3);
  });
});

describe('the figures in grey', () => {
  it.each(farmQuestions)('stand for every field of %s, and every field has its entry', (question) => {
    const keys = asksOf(question).flatMap(({ fields }) => fields.map(({ key }) => key));
    expect([...resultsOf(answersOf({}, { question })).grey.keys()].sort()).toEqual(keys.toSorted());
    expect(askedFigures[question].map(({ key }) => key).sort()).toEqual(keys.toSorted());
  });

  it('are what the model takes, in the unit that is asked for', () => {
    const { grey } = resultsOf(answersOf({ timeToday: 6, nurseryTime: 2 }));
    expect(['finishingTime', 'lostToday', 'boards', 'freeHours'].map((key) => grey.get(key as 'boards'))).toEqual([
      '4',
      '5',
      '640',
      '0',
    ]);
  });
});
