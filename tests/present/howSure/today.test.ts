import { describe, expect, it } from 'vitest';
import { textOf } from '../../../src/present/text/phrase';
import { createFormat } from '../../../src/present/text/numberFormat';
import { todaySentence } from '../../../src/present/howSure/today';
import { asked, modelOf } from '../../model/table';

const english = createFormat('en-GB');
const said = (text: string): string =>
  textOf(todaySentence(asked(modelOf(text), 'r'), english)).replaceAll('\u00a0', ' ');

describe('where draws are not about today', () => {
  it.each([
    ['nothing is said while they are', 'a: 2 | range: 1 4\nb: 3 | range: 1 5 normal\nr: a + b', ''],
    ['nothing is said of an input that does not touch the result', 'a: 9 | range: 1 4\nr: 5', ''],
    ['nothing is said of a median a hair away', 'a: 1.8 | range: 1.1 3 lognormal\nr: a', ''],
    [
      'a number outside its range is named',
      'a: 9 | range: 1 4 | label: Wage\nr: a',
      'Wage stands outside its range today, and the draws keep to the range: they are not about today’s number.',
    ],
    [
      'several are',
      'a: 9 | range: 1 4 | label: Wage\nb: 0 | range: 1 2 | label: Price\nr: a + b',
      'Wage and Price stand outside their ranges today',
    ],
    [
      'a number at an end of its range is named, with the side that is drawn from',
      'a: 1 | range: 1 4 | label: Loss\nr: a',
      'Loss stands at the low end of its range today: the draws lie above it.',
    ],
    [
      'also at the upper end',
      'a: 4 | range: 1 4 pert | label: Kept\nr: a',
      'Kept stands at the high end of its range today: the draws lie below it.',
    ],
    [
      'several at an end are listed',
      'a: 1 | range: 1 4\nb: 4 | range: 1 4\nr: a + b',
      'a and b stand at an end of their ranges today: the draws lie to one side of them.',
    ],
    [
      'a shape spread round another number is named',
      'a [h]: 2 | range: 1 9 uniform | label: Wage\nr: a',
      'Wage is drawn round 5 h, not round today’s 2, for so its range is shaped.',
    ],
    [
      'and so is the middle of two values',
      'a: 1 | range: 1 2 either\nr: a',
      'a is drawn round 1.5, not round today’s 1',
    ],
    [
      'the rest is listed',
      'a: 2 | range: 1 9 normal\nb: 2 | range: 1 9 uniform | label: Price\nr: a + b',
      'for so its range is shaped; so is Price, round another.',
    ],
  ])('%s', (_claim, text, expected) => {
    if (expected === '') expect(said(text)).toBe('');
    else expect(said(text)).toContain(expected);
  });
});
