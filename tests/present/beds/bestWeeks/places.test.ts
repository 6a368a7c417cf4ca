import { describe, expect, it } from 'vitest';
import { numberToText, type Decimal } from '../../../../src/core/number';
import { lever, type Lever } from '../../../../src/model/view';
import { densityPlaces, timePlaces } from '../../../../src/present/beds/bestWeeks/places';
import { asked, idOf, modelOf } from '../../../model/table';

function leversOf(text: string): (name: string) => Lever {
  const question = asked(modelOf(`${text}\nr: 1 * x`), 'r');
  return (name) => lever(question.view, idOf(question.view.model, name))!;
}

function told(places: readonly Decimal[]): string {
  return `${places.map(numberToText).slice(0, 3).join(' ')} … ${numberToText(places.at(-1)!)}, ${places.length}`;
}

describe('the times that are looked at', () => {
  it.each([
    ['go in half days from half of today’s to half as much again', 'x [day]: 10', '5 5.5 6 … 15, 21'],
    ['go in the input’s own steps', 'x [day]: 10 | step: 1', '5 6 7 … 15, 11'],
    ['reach over the whole range', 'x [day]: 10 | range: 2 20', '2 2.5 3 … 20, 37'],
    ['are four steps to either side at least', 'x [week]: 1 | step: 0.1', '0.5 0.6 0.7 … 1.5, 11'],
    ['but never 0 or less', 'x [week]: 1 | step: 0.5', '0.5 1 1.5 … 3, 6'],
    ['are no more than can be drawn: steps are taken together', 'x [day]: 100', '50 52 54 … 150, 51'],
    ['keep today’s among them then', 'x [day]: 100 | step: 0.4', '50 52 54 … 150, 51'],
  ])('%s', (_claim, text, places) => expect(told(timePlaces(leversOf(text)('x'), undefined))).toBe(places));

  it('leave something for the time that gives back', () => {
    const of = leversOf('x [day]: 10\nlate [day]: 3');
    expect(told(timePlaces(of('x'), { lever: of('late'), each: of('x').base.dividedBy(10) }))).toBe(
      '5 5.5 6 … 12.5, 16',
    );
  });
});

describe('the densities that are looked at', () => {
  it.each([
    ['are whole numbers', 'x: 60', '30 31 32 … 90, 61'],
    ['or the input’s own steps', 'x: 60 | step: 5', '30 35 40 … 90, 13'],
    ['or small steps where the number is small', 'x: 2', '1 1.2 1.4 … 3, 11'],
  ])('%s', (_claim, text, places) => expect(told(densityPlaces(leversOf(text)('x')))).toBe(places));
});
