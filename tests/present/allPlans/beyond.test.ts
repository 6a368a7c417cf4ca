import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { beyondSentence, othersSentence, type BeyondContext } from '../../../src/present/allPlans/beyond';
import { hasFurther, judgedHeadline, namedPlans } from '../../../src/present/allPlans/plans';
import { caseOf } from '../../../src/present/theCase/caseOf';
import { otherPlans } from '../../../src/present/theCase/otherPlans';
import { idOf } from '../../model/table';
import { format, read, worked } from './given';

const { model, values } = worked();

function matter(numbers: readonly number[], compared: readonly number[] = [0, 3]): BeyondContext {
  const result = model.cells[idOf(model, 'margin')]!;
  return {
    result,
    way: 'highest',
    plans: namedPlans(model, compared),
    numbers: numbers.map((thousands) => decimal(thousands * 1000)),
    compared,
  };
}

describe('a further plan', () => {
  it('that does better than both is named with its letter', () =>
    expect(read(beyondSentence(matter([1, 5, 4, 2]), format))).toBe(
      'Plan C, Rockwool, has the highest Margin of all: 5,000 USD a year.',
    ));

  it('is not named where it is only as good as one of the two', () =>
    expect(beyondSentence(matter([5, 5, 4, 2]), format)).toEqual([]));

  it('that is one of two alike is named with the other', () =>
    expect(read(beyondSentence(matter([1, 5, 5, 2]), format))).toBe(
      'Plans C, Rockwool and D, Holder, have the highest Margin of all: 5,000 USD a year.',
    ));

  it('has its line beside a case of two others', () => {
    const { line, best } = othersSentence(matter([1, 5, NaN, 2]), format);
    expect(read(line)).toBe('Margin in the other plans: C, Rockwool, 5,000 USD a year; D, Holder, no value.');
    expect(read(best)).toBe('Plan C, Rockwool, has the highest Margin of all: 5,000 USD a year.');
  });

  it('that does not do better leaves the best of the two its place', () => {
    const { line, best } = othersSentence(matter([1, 3, 4, 9]), format);
    expect(read(line)).toBe(
      'Margin in the other plans: C, Rockwool, 3,000 USD a year; D, Holder, 4,000 USD a year. B, Peat, has the highest Margin of all 4.',
    );
    expect(best).toEqual([]);
  });
});

describe('of a case about two of four plans', () => {
  const made = caseOf(model, values, 3, 0);
  if (made.kind !== 'made') throw new Error('no case');
  const given = { model, values, made, plans: [0, 3] as const };

  it('the others come to their headline in money a year', () => {
    const { line, best } = othersSentence(
      otherPlans({ ...given, headline: model.cells[idOf(model, 'margin')]! }),
      format,
    );
    expect(read(line)).toBe('Margin in the other plans: C, Rockwool, 35,500 USD a year; D, Holder, 35,250 USD a year.');
    expect(read(best)).toBe('Plan C, Rockwool, has the highest Margin of all: 35,500 USD a year.');
  });

  it('or to what going there changes in the budget', () => {
    const { line } = othersSentence(otherPlans({ ...given, headline: undefined }), format);
    expect(read(line)).toBe(
      'Net change from Foam in the other plans: C, Rockwool, 500.00 USD a year; D, Holder, 250.00 USD a year.',
    );
  });
});

it('plans beside two compared are only there in a model of more', () =>
  expect([hasFurther(2, [0, 1]), hasFurther(1, [0]), hasFurther(3, [0, 2])]).toEqual([false, false, true]));

it('plans are judged by the headline asked about, else by the first that tells better from worse', () => {
  expect(judgedHeadline(model, 'margin')?.name).toBe('margin');
  expect(judgedHeadline(model, 'plants')?.name).toBe('cost_plant');
  expect(judgedHeadline(worked('a: 1').model, 'a')).toBeUndefined();
});
