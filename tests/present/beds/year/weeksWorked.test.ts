import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readModelText } from '../../../../src/files/readModel';
import { evaluatePlan } from '../../../../src/model/values';
import { weeksWorkedSentence } from '../../../../src/present/beds/year/weeksWorked';
import { english, read } from '../given';

function said(weeks: string): string {
  const text = readFileSync('models/transplant-hire.csv', 'utf8').replace('week/year,50,', `week/year,${weeks},`);
  const { model } = readModelText(text);
  return read(weeksWorkedSentence(model.cells, evaluatePlan(model.plans[0]!), english));
}

it('a model that counts other weeks a year than the calendar runs is said to', () => {
  expect(said('47')).toBe(
    'These are 52 weeks on end; the model’s results count 47 a year, by “Weeks worked in a year”.',
  );
});

it('a model that counts as many weeks needs no word, nor one that cannot count', () => {
  expect(said('52')).toBe('');
  expect(said('1/0')).toBe('');
});
