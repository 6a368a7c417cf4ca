import { expect, it } from 'vitest';
import { readTrialsText } from '../../../src/files/readTrials';
import { createFormat } from '../../../src/present/text/numberFormat';
import { blankText, faultsOf, faultText } from '../../../src/present/timing/batchFaults';
import { english } from './trials';

const trials = readTrialsText('step,plants,seconds,date\nmoving,,,\nmoving,ten,-5,\nmoving,10,100,\n');

it('what is blank is no fault', () => {
  const { wrong, blank } = faultsOf(trials, 2);
  expect(wrong).toEqual([]);
  expect(blankText(blank)).toBe('Not counted yet: plants and seconds still blank.');
  expect(blankText(['step'])).toBe('Not counted yet: step still blank.');
  expect(blankText([])).toBe('');
});

it('what is wrong is told by its row', () => {
  expect(faultsOf(trials, 3).wrong.map((fault) => faultText(fault, english))).toEqual([
    'In plants, not a number: ten. Write digits, as in 1,234.5.',
    'Seconds not above 0: -5. Write the seconds that the whole batch took.',
  ]);
  expect(faultsOf(trials, 4)).toEqual({ wrong: [], blank: [] });
});

it('a number is asked for as people write it here', () => {
  const [first] = faultsOf(trials, 3).wrong;
  expect(faultText(first!, createFormat('de'))).toBe('In plants, not a number: ten. Write digits, as in 1.234,5.');
});
