import { describe, expect, it } from 'vitest';
import {
  givenText,
  ownNumbersSaid,
  ownNumbersText,
  repairOffers,
} from '../../../../src/present/numbers/own/formulaTexts';
import { textOf } from '../../../../src/present/text/phrase';
import { cellNamed } from '../../../../src/model/model';
import { modelOf } from '../../../model/table';

const model = modelOf(`
wage [EUR/h]: 15
hours [h/year]: 1800
count: 2
hands [EUR/year]: wage * hours`);
const cell = (name: string) => cellNamed(model, name)!;

describe('what a formula gives', () => {
  it.each([
    ['wage * hours', 'Gives EUR/year.'],
    ['wage * 2', 'Gives EUR/h.'],
    ['count * 2', 'Gives a plain number.'],
    ['wage > 0 * wage', 'Gives true or false.'],
    ['300', 'A number in EUR/year.'],
    ['wage + hours', undefined],
    ['wage *', undefined],
    ['wagee', undefined],
  ])('%s', (typed, said) => expect(givenText(model, cell('hands'), 'formula', typed)).toBe(said));

  it('a number of an entry without a unit', () =>
    expect(givenText(model, cell('count'), 'formula', '3')).toBe('A plain number.'));
});

it('says what a repair would write', () => {
  const words = (typed: string) => repairOffers(model, cell('hands'), 'formula', typed).map((offer) => offer.words);
  expect(words('wage × hours')).toEqual(['Write wage * hours']);
  expect(words('wagee * hours')).toEqual(['Use wage']);
  expect(words('wage * hours')).toEqual([]);
});

it('says which numbers become entries, and that they have', () => {
  expect(ownNumbersText({ numbers: ['300'] })).toBe('Make 300 an entry of its own');
  expect(ownNumbersText({ numbers: ['54000', '300'] })).toBe('Make 54000 and 300 entries of their own');
  expect(textOf(ownNumbersSaid({ numbers: ['300'] }, 'Rent'))).toBe(
    '300 is an entry of its own now, below Rent, which is made from it.',
  );
  expect(textOf(ownNumbersSaid({ numbers: ['54000', '300'] }, 'Rent'))).toBe(
    '54000 and 300 are entries of their own now, below Rent, which is made from them.',
  );
});
