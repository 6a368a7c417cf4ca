import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../../src/core/number';
import { parseUnit, type Unit } from '../../../src/core/unit';
import { evaluatePlan } from '../../../src/model/values';
import { askedFigure, guessesSentence, guessStrip, readGuesses } from '../../../src/present/lesson/guesses';
import { createFormat } from '../../../src/present/text/numberFormat';
import { textOf } from '../../../src/present/text/phrase';
import { modelOf } from '../../model/table';

const english = createFormat('en-GB');
const german = createFormat('de-DE');
const board = parseUnit('board', new Set(['board'])) as Unit;

function read(typed: string, format = english): [string[], readonly string[]] {
  const { numbers, unread } = readGuesses(typed, format);
  return [numbers.map(String), unread];
}

describe('guesses as they are typed', () => {
  it.each([
    ['30 45;12', english, [['12', '30', '45'], []]],
    ['30, 45, 12', english, [['12', '30', '45'], []]],
    ['1500 7.5', english, [['7.5', '1500'], []]],
    // A thousand and a half, or one and a half?
    ['1,500 7.5', english, [['7.5'], ['1,500']]],
    ['7,5; 30', german, [['7.5', '30'], []]],
    ['7,5 about 30', english, [['30'], ['7,5', 'about']]],
    ['', english, [[], []]],
    ['-3 1e3', english, [['-3', '1000'], []]],
  ])('%j', (typed, format, expected) => {
    expect(read(typed, format)).toEqual(expected);
  });
});

describe('what the guesses come to', () => {
  const sentence = (typed: string, answer?: number | Decimal): string =>
    textOf(
      guessesSentence(
        readGuesses(typed, english),
        board,
        answer === undefined ? undefined : { number: decimal(String(answer)), unit: board },
        english,
      ),
    );
  it.each([
    ['', undefined, ''],
    ['30', undefined, '1 guess: 30.'],
    ['30 12 45', undefined, '3 guesses, from 12 to 45; the middle one is 30.'],
    // Of an even count the mean of the two in the middle: (12 + 30) / 2.
    ['30 12', undefined, '2 guesses, from 12 to 30; the middle one is 21.'],
    [
      '30 12',
      10,
      '2 guesses, from 12 to 30; the middle one is 21. The answer is 10\u00a0boards; the nearest guess was 12.',
    ],
    [
      '30 10',
      10,
      '2 guesses, from 10 to 30; the middle one is 20. The answer is 10\u00a0boards, and somebody said so.',
    ],
    [
      '540',
      decimal(90).dividedBy(decimal(3).dividedBy(18)),
      '1 guess: 540. The answer is 540\u00a0boards, and somebody said so.',
    ],
    ['30 x', NaN, '1 guess: 30. Not read as a number: x.'],
    ['', 10, ''],
  ])('%j beside %s', (typed, answer, said) => {
    expect(sentence(typed, answer)).toBe(said);
  });
});

describe('the strip of guesses', () => {
  it('has a place for each number and for the answer', () => {
    const strip = guessStrip(readGuesses('30 50 30', english), board, decimal(10), english);
    expect(strip.marks).toEqual([
      { text: '30', count: 2, at: 0.5 },
      { text: '50', count: 1, at: 1 },
    ]);
    expect(strip.answer).toEqual({ text: '10', count: 0, at: 0 });
  });

  it('writes no number over another', () => {
    const { marks } = guessStrip(readGuesses('0 1 2 100', english), board, undefined, english);
    expect(marks.map(({ text }) => text)).toEqual(['0', '', '', '100']);
  });

  it('puts what is all the same in the middle', () => {
    expect(guessStrip(readGuesses('7 7', english), board, undefined, english)).toEqual({
      marks: [{ text: '7', count: 2, at: 0.5 }],
      answer: undefined,
    });
  });
});

describe('the figure that a step asks for', () => {
  const model = modelOf('boards [board]: 90 | in One: 90 | in Two: 80\nhalf [board]: boards / 2');
  it('is the one that is marked', () => {
    const figure = askedFigure(model, 'Of {boards} boards {half; Two; answer} are wide.');
    expect(figure?.value(model.plans.map((plan) => evaluatePlan(plan))).toString()).toBe('40');
  });
  it.each(['Of {boards} boards', 'None.', '{haf; answer}'])('is none in %j', (answer) => {
    expect(askedFigure(model, answer)).toBeUndefined();
  });
});
