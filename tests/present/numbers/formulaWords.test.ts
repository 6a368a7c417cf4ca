import { describe, expect, test } from 'vitest';
import { formulaWords } from '../../../src/present/numbers/formulaWords';
import { nursery } from '../nursery';

const { model } = nursery();
const read = (formula: string): string =>
  formulaWords(formula, model)
    .map((word) => ('cell' in word ? `[${word.cell.label}]` : word.text))
    .join('');

describe('a formula is printed with the entries that it names', () => {
  test.each([
    ['heads*price', '[Heads a year] × [Price]'],
    ['-wage-(-2)', '−[Wage] − (−2)'],
    ['2 - -wage', '2 − −[Wage]'],
    [
      'boards>=1 and not (price==2) ? max(0,price) : price/2',
      '[Nursery boards] ≥ 1 and not ([Price] = 2) ? max(0, [Price]) : [Price] ÷ 2',
    ],
    ['unknown * 2', 'unknown × 2'],
    ['wage[1] <b>', 'wage[1] <b>'],
  ])('%s', (formula, printed) => expect(read(formula)).toBe(printed));
});
