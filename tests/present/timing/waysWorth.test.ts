import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { readModelText } from '../../../src/files/readModel';
import { edit, editIn } from '../../../src/model/edit';
import type { Model } from '../../../src/model/model';
import { question } from '../../../src/model/response';
import { evaluatePlan } from '../../../src/model/values';
import { textOf } from '../../../src/present/text/phrase';
import { waysFound } from '../../../src/present/timing/ways';
import { moneyResults, waysWorth, worthSentence, type WaysWorth } from '../../../src/present/timing/waysWorth';
import { english, only, read, timing } from './trials';

const hire = readModelText(readFileSync('models/transplant-hire.csv', 'utf8')).model;
const plan = hire.plans.length - 1;
const input = hire.cells[hire.ids.get('transplant_time')!]!;
const text =
  'step,plants,seconds,way\nm,10,130,bed\nm,10,140,bed\nm,10,150,bed\nm,10,110,bench\nm,10,120,bench\nm,10,115,bench\n';
const ways = waysFound(only(text), ['bed', 'bench'], timing())!;

function worth(name: string): WaysWorth | undefined {
  const view = { model: hire, result: hire.ids.get(name)!, plan: hire.plans[plan]!, against: undefined };
  return waysWorth(question(view, evaluatePlan(view.plan), undefined), input, ways, 'mean', timing());
}

/** A result of the model with a number entered by hand. */
function entered(model: Model, seconds: string, result: number): number {
  const after = edit(model, editIn(model, model.plans[plan]!, input.id, seconds)).model;
  return evaluatePlan(after.plans[plan]!).numbers[result]!.toNumber();
}

describe('what a quicker way is worth', () => {
  it('asks first for money a year, of the headlines', () => {
    const [first] = moneyResults(hire, plan);
    expect([first!.name, first!.unitText, first!.role]).toEqual(['margin', 'EUR/year', 'headline']);
  });

  it('is what the model says once each time is entered by hand', () => {
    const found = worth('margin')!;
    const { result } = found;
    const byHand = entered(hire, '11.5', result.id) - entered(hire, '14', result.id);
    expect(found.change.toNumber()).toBeCloseTo(byHand, 6);
    expect(found.interval![0].lt(found.change) && found.interval![1].gt(found.change)).toBe(true);
  });

  it('is told with where it may lie', () =>
    expect(read(textOf(worthSentence(worth('margin')!, english)))).toMatch(
      /^On this farm that is [\d,]+ EUR a year more of Margin, in Nursery first, between [+−\d,]+ and \+[\d,]+, by the model with Move a plant/,
    ));

  it('is not said of a result that does not hang on the entry', () => expect(worth('hour_cost')).toBeUndefined());

  it('is told to be nothing where the hours are paid anyway', () => {
    const none = { ...worth('margin')!, change: decimal(0) };
    expect(read(textOf(worthSentence(none, english)))).toContain('the model pays the hours either way');
  });
});
