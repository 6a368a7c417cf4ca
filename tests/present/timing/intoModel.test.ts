import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { edit } from '../../../src/model/edit';
import type { Model } from '../../../src/model/model';
import { textOf } from '../../../src/present/text/phrase';
import {
  editsOf,
  isPut,
  offerOf,
  putSentence,
  type TimeOffer,
  type TimeUsed,
} from '../../../src/present/timing/intoModel';
import { modelOf } from '../../model/table';
import { timing, english, only, read } from './trials';

const hire = readModelText(readFileSync('models/transplant-hire.csv', 'utf8')).model;
/** Mean 12, from 10.7008 to 13.2992. */
const batches = '10 110; 10 120; 10 130; 10 120';

function offer(
  model: Model,
  name: string,
  text = batches,
  used: TimeUsed = 'mean',
  plan = model.plans.length - 1,
): TimeOffer {
  return offerOf(model, plan, model.cells[model.ids.get(name)!]!, only(text).time!, used, timing())!;
}

function put(model: Model, given: TimeOffer, withRange: boolean, plan = model.plans.length - 1): Model {
  return editsOf(given, model, plan, withRange, new Date(2026, 4, 3)).reduce(
    (now, change) => edit(now, change).model,
    model,
  );
}

describe('a timed step for an input', () => {
  it('is its mean with its interval as the range', () => {
    const { value, range, today } = offer(hire, 'transplant_time');
    expect([today, value, ...range!].map(String)).toEqual(['12', '12', '10.7', '13.3']);
  });

  it('is the standard time where that is asked for, its range lengthened too', () => {
    const { value, range } = offer(hire, 'transplant_time', batches, 'standard');
    expect([value, ...range!].map(String)).toEqual(['13.8', '12.31', '15.29']);
  });

  it('comes in the unit of the input', () => {
    const model = modelOf('plants [plant]: 5\nmove [min/plant]: 0.3 | range: 0.1 0.5');
    expect(offer(model, 'move').value.toString()).toBe('0.2');
  });

  it.each([
    ['one batch', '10 120', 'One batch gives no range.'],
    ['batches that agree', '10 120; 10 120', 'Batches that agree give no range.'],
    ['an interval below 0', '10 100; 10 140', 'The interval reaches below 0'],
  ])('has no range from %s', (_claim, text, why) => {
    const found = offer(hire, 'transplant_time', text);
    expect(found.range).toBeUndefined();
    expect(found.noRange).toContain(why);
  });

  it('has no range where the plan has a number of its own, and goes to that plan', () => {
    const model = modelOf('plants [plant]: 5\nmove [s/plant]: 10 | in Quick: | in Slow: 20');
    const found = offer(model, 'move');
    expect(found.noRange).toBe('This plan has a number of its own there, which counts as certain.');
    expect(read(textOf(putSentence(found, false, english)))).toBe(
      'move: 12 s per plant instead of 20 s per plant, in Slow only.',
    );
    expect(editsOf(found, model, model.plans.length - 1, true, new Date(2026, 4, 3))).toEqual([
      { row: found.cell.row, column: 'plan: Slow', text: '12', source: 'timed: 4 batches, 3 May 2026' },
    ]);
  });
});

describe('what is put into a model', () => {
  it('is the number alone, or with both ends of its range', () => {
    const found = offer(hire, 'setting_time');
    expect(isPut(found, false)).toBe(false);
    const alone = put(hire, found, false);
    const both = put(hire, found, true);
    const after = offer(both, 'setting_time');
    expect(after.today.toString()).toBe('12');
    expect(isPut(offer(alone, 'setting_time'), false)).toBe(true);
    expect(isPut(offer(alone, 'setting_time'), true)).toBe(false);
    expect(isPut(after, true)).toBe(true);
    expect(both.faults).toEqual(hire.faults);
  });

  it('is told', () => {
    expect(read(textOf(putSentence(offer(hire, 'harvest_time'), true, english)))).toBe(
      'Cut, trim and pack a head: 12 s per plant instead of 30 s per plant, range 10.7 to 13.3, in every plan.',
    );
    expect(read(textOf(putSentence(offer(hire, 'harvest_time'), false, english)))).toContain(
      '30 s per plant, outside its range of 24 to 36 s per plant, in every plan.',
    );
  });

  it('is told to count only where no plan has a number of its own', () => {
    const model = modelOf('plants [plant]: 5\nmove [s/plant]: 10 | in Slow: 20 | in Quick:');
    const quick = model.plans.findIndex(({ name }) => name === 'Quick');
    expect(read(textOf(putSentence(offer(model, 'move', batches, 'mean', quick), false, english)))).toBe(
      'move: 12 s per plant instead of 10 s per plant, in every plan that has no number of its own there.',
    );
  });
});
