import { decimal, type Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import { textFigures, type TextFigure } from '../../model/inText/textFigure';
import type { Model } from '../../model/model';
import type { Format } from '../text/numberFormat';
import { listed, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import { typedNumber } from '../text/typedNumber';

/** The guesses of a class, as they were typed one behind another. */
export interface Guesses {
  /** From the smallest to the largest. */
  readonly numbers: readonly Decimal[];
  /** What could not be read as a number. */
  readonly unread: readonly string[];
}

/** Reads guesses parted by blanks or semicolons, and by commas where a comma is no decimal mark. */
export function readGuesses(typed: string, format: Format): Guesses {
  const between = format.marks.decimal === ',' ? /[\s;]+/ : /[\s;]+|,(?=\s|$)/;
  const words = typed.split(between).filter((word) => word !== '');
  const read = words.map((word) => ({ word, found: typedNumber(word, format) }));
  const numbers = read.flatMap(({ found }) => ('text' in found && !('code' in found) ? decimal(found.text) : []));
  return {
    numbers: numbers.sort((a, b) => a.cmp(b)),
    unread: read.flatMap(({ word, found }) => ('code' in found ? word : [])),
  };
}

/** The figure that a step asks for: the one that its answer marks as such; undefined where none is marked. */
export function askedFigure(model: Model, answer: string): TextFigure | undefined {
  return textFigures(model, answer).find(({ isAnswer }) => isAnswer);
}

/** The middle of sorted numbers; of an even count the mean of the two in the middle. */
function median(sorted: readonly Decimal[]): Decimal {
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)]!, sorted[Math.floor(sorted.length / 2)]!];
  return low.plus(high).dividedBy(2);
}

/** The answer with the unit in which it is told. */
export interface Answer {
  readonly number: Decimal;
  readonly unit: Unit | undefined;
}

function nearestTo(answer: Decimal, numbers: readonly Decimal[]): Decimal {
  return numbers.reduce((best, one) => (one.minus(answer).abs().lt(best.minus(answer).abs()) ? one : best));
}

/** How far off the nearest guess was. */
function nearestSentence(numbers: readonly Decimal[], { number, unit }: Answer, format: Format): Phrase {
  const nearest = nearestTo(number, numbers);
  const answer = spoken(number, unit, format);
  // What reads the same is the same: a quotient may differ from it in its last digit.
  if (format.value(nearest, unit) === format.value(number, unit))
    return say`The answer is ${answer}, and somebody said so.`;
  return say`The answer is ${answer}; the nearest guess was ${format.value(nearest, unit)}.`;
}

/** What the guesses of a class come to, beside the answer once that may be told. */
export function guessesSentence(
  guesses: Guesses,
  unit: Unit | undefined,
  answer: Answer | undefined,
  format: Format,
): Phrase {
  const { numbers, unread } = guesses;
  const [first, last] = [numbers[0], numbers.at(-1)];
  const value = (number: Decimal): string => format.value(number, unit);
  const bad = unread.length === 0 ? [] : say`Not read as a number: ${listed(unread, 5)}.`;
  if (first === undefined || last === undefined) return bad;
  const range =
    numbers.length === 1
      ? say`1 guess: ${value(first)}.`
      : say`${String(numbers.length)} guesses, from ${value(first)} to ${value(last)}; the middle one is ${value(median(numbers))}.`;
  const told = answer === undefined || answer.number.isNaN() ? [] : nearestSentence(numbers, answer, format);
  return sentences(range, told, bad);
}

/** Least distance on the strip, as a share of it, between two numbers that are both written. */
const room = 0.1;

/** Guesses of one number on the strip. */
export interface GuessMark {
  /** Blank where the number before it is too near. */
  readonly text: string;
  readonly count: number;
  /** Where it stands, from 0 at the left to 1 at the right. */
  readonly at: number;
}

/** The strip on which guesses stand, and the answer once it may be told. */
export interface GuessStrip {
  readonly marks: readonly GuessMark[];
  readonly answer: GuessMark | undefined;
}

/** Places guesses along a line that has room for the answer. */
export function guessStrip(
  { numbers }: Guesses,
  unit: Unit | undefined,
  answer: Decimal | undefined,
  format: Format,
): GuessStrip {
  const told = answer === undefined || answer.isNaN() ? [] : [answer];
  const all = [...numbers, ...told].map((number) => number.toNumber());
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const at = (number: Decimal): number => (high > low ? (number.toNumber() - low) / (high - low) : 0.5);
  const mark = (number: Decimal, count: number): GuessMark => ({
    text: format.value(number, unit),
    count,
    at: at(number),
  });
  const marks: GuessMark[] = [];
  let written = -room;
  numbers.forEach((number, i) => {
    if (i > 0 && numbers[i - 1]!.eq(number)) return;
    const one = mark(number, numbers.filter((other) => other.eq(number)).length);
    const isFree = one.at - written >= room;
    if (isFree) written = one.at;
    marks.push(isFree ? one : { ...one, text: '' });
  });
  return { marks, answer: told[0] && mark(told[0], 0) };
}
