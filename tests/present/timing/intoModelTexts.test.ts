import { describe, expect, it } from 'vitest';
import { allowanceText, noInputText } from '../../../src/present/timing/intoModelTexts';

describe('a plan without an input for a time', () => {
  it.each([
    ['is named', 'With a hire', /^No input of With a hire is /],
    ['is the model where it has no name', '', /^No input of this model is /],
  ])('%s', (_claim, plan, text) => expect(noInputText(plan)).toMatch(text));
});

describe('the time for a model', () => {
  it.each([
    ['is the mean where the model adds an allowance itself', true, 'give it the mean'],
    ['is the standard time where it has none', false, 'the standard time brings rest and waiting'],
  ])('%s', (_claim, own, text) => expect(allowanceText(own)).toContain(text));
});
