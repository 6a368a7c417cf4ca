import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { endText } from '../../../src/present/text/rangeEnds';
import { createFormat } from '../../../src/present/text/numberFormat';
import { modelOf } from '../../model/table';

const format = createFormat('en-GB');

describe('a number of an input is shown', () => {
  it.each([
    ['by the words of its choice', 'choices: 1 one-use plug; 2 reusable plug', '2', 'reusable plug'],
    ['as a number where it is none of them', 'choices: 1 one-use plug; 2 reusable plug', '3', '3'],
    ['as it was typed without choices', 'note: any', '2.50', '2.5'],
    ['shortened where it is long', 'note: any', '2.123456789', '2.123'],
  ])('%s', (_claim, column, number, text) => {
    expect(endText(decimal(number), modelOf(`a: 1 | ${column}`).cells[0]!, format)).toBe(text);
  });
});
