import type { Switch } from '../../../src/present/whatMatters/switching/switchingInput';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import type { Cell } from '../../../src/model/cell';
import { textOf, type Phrase } from '../../../src/present/text/phrase';
import type { DrawsFound } from '../../../src/present/howSure/drawsFound';
import { spreadOf } from '../../../src/present/howSure/summary';
import { closest } from '../../../src/present/theCase/closest';
import {
  besideLabel,
  turningSentence,
  turningTexts,
  oddsSentence,
  rangeText,
} from '../../../src/present/theCase/hangsOn';
import { modelOf } from '../../model/table';
import { format, hire, madeIn } from './budgets';

const model = modelOf(`
  wage [EUR/h]: 12 | range: 9 16 | label: Wage
  move [s/plant]: 12 | range: 9 13 | label: Move | in A: 12
  boards [board]: 7 | label: Boards
  loss [%]: 0 | range: 0 3 | label: Loss
  plug: 1 | range: 1 2 | shape: either | choices: 1 one-use plug; 2 reusable plug | label: Plug in use
  own [board]: 7 | range: 1 20 | label: Own | in A: 7 | in B: 8
`);

function at(name: string, base: number, value: number | undefined, kind: Switch['kind'] = 'level'): Switch {
  const cell = model.cells.find((each) => each.name === name)!;
  const turned = value === undefined ? undefined : decimal(value);
  return { cell, base: decimal(base), value: turned, kind, change: undefined, count: value === undefined ? 0 : 1 };
}

const plain = (phrase: Phrase): string => textOf(phrase).replaceAll('\u00a0', ' ');
const nameOf = (cell: Cell): string => cell.label;
const hinges = (...found: Switch[]) => closest(found, model, 1);
const made = (netChange: number) => ({ ...madeIn(hire), netChange: decimal(netChange) });
const told = (netChange: number, ...found: Switch[]): string =>
  plain(turningSentence(hinges(...found), made(netChange), nameOf, format));

describe('the closest turning points', () => {
  it('are five at most, without those that cannot turn it', () => {
    const many = Array.from({ length: 7 }, (_, i) => at('wage', 12, 13 + i));
    const { hinges: found, inside } = hinges(at('boards', 7, undefined), ...many);
    expect(found.map(({ value }) => value.toNumber())).toEqual([13, 14, 15, 16, 17]);
    expect(inside).toBe(4);
  });

  it('begin with those in their own range, by how much of it they take, also from a number that is 0', () => {
    const found = hinges(at('boards', 7, 7.1), at('wage', 12, 15), at('move', 12, 13.1), at('loss', 0, 0.5));
    expect(found.hinges.map(({ cell }) => cell.name)).toEqual(['loss', 'wage', 'boards', 'move']);
  });

  it('lie in their range or not, ends included; a plan’s own number has none', () => {
    const { hinges: found } = hinges(at('wage', 12, 16), at('move', 12, 13.1), at('boards', 7, 8), at('own', 8, 9));
    expect(found.map(({ inRange }) => inRange)).toEqual([true, false, undefined, undefined]);
    expect(found.slice(1, 3).map((hinge) => besideLabel(hinge, format))).toEqual([
      'outside 9 to 13 s/plant',
      'boards, no range',
    ]);
    expect(found.map((hinge) => rangeText(hinge, format))).toEqual([
      'within 9 to 16',
      'outside 9 to 13',
      'no range',
      'no range',
    ]);
  });
});

describe('what it hangs on', () => {
  it('is said of a gain, with which way and today', () => {
    expect(told(600, at('move', 12, 14.2))).toBe(
      'It stops paying when Move rises above 14.2 s per plant; today it is 12 s per plant. No entry by itself turns it within its own range.',
    );
  });

  it('is said of a loss', () => {
    expect(told(-600, at('wage', 12, 10), at('move', 12, 9.5))).toBe(
      'It starts to pay when Wage falls below 10.00 EUR an hour; today it is 12 EUR an hour. Two entries, each by itself, turn it within their own range.',
    );
  });

  it('speaks of no range where none has one', () => {
    expect(told(600, at('boards', 7, 9))).toBe(
      'It stops paying when Boards rises above 9 boards; today it is 7 boards.',
    );
  });

  it('lies behind the value at a jump, where the value itself still pays', () => {
    const turns = (kind: Switch['kind'], value: number): string =>
      turningTexts(hinges(at('move', 12, value, kind)).hinges[0]!, format).turns.replace('\u00a0', ' ');
    expect([turns('behind', 13), turns('behind', 11), turns('jumped', 11), turns('level', 13)]).toEqual([
      'just above 13',
      'just below 11',
      '11',
      '13',
    ]);
  });

  it('is the value itself at a jump that is done there', () => {
    expect(told(600, at('boards', 7, 4.5, 'jumped'))).toBe(
      'It stops paying when Boards comes to 4.5 boards; today it is 7 boards.',
    );
  });

  it('is another choice, by its words', () => {
    const plug = at('plug', 1, 2, 'jumped');
    expect(told(-600, plug)).toBe(
      'It starts to pay when Plug in use is reusable plug; today it is one-use plug. One entry by itself turns it within its own range.',
    );
    expect(turningTexts(hinges(plug).hinges[0]!, format)).toEqual({
      today: 'one-use plug',
      turns: 'reusable plug',
      unit: '',
    });
  });

  it('has its unit as it is said after the number', () => {
    expect(turningTexts(hinges(at('boards', 7, 4.5)).hinges[0]!, format)).toMatchObject({
      turns: '4.5',
      unit: 'boards',
    });
  });

  it('may be nothing', () =>
    expect(told(600, at('boards', 7, undefined))).toMatch(/^No entry by itself can turn the answer/));
});

describe('how sure it is', () => {
  const found = (results: readonly number[], failed = 0): DrawsFound => ({
    done: results.length + failed,
    failed,
    spread: spreadOf(Float64Array.from(results).sort(), undefined, 0),
    certain: false,
    details: undefined,
    indices: undefined,
  });
  const odds = (results: readonly number[], failed = 0): string =>
    plain(oddsSentence(found(results, failed), madeIn(hire), format));

  it('counts draws above 0 and says where most lie', () => {
    const results = Array.from({ length: 101 }, (_, i) => (i - 38.5) * 100);
    expect(odds(results)).toBe(
      'Drawn from all ranges at once, it pays in 61 of 100 draws; in 90 of 100 the net change lies between −3,350 and 5,650 EUR a year.',
    );
  });

  it('says how often it comes to the same', () => {
    expect(odds([-1, 0, 0, 1])).toContain('it pays in 25 of 100 draws, comes to the same in 50 of 100 draws;');
  });

  it('says how many draws have no value', () => {
    expect(odds([1, 2, 3], 1)).toContain('In 25 of 100 draws it cannot be computed; this speaks of the rest.');
  });

  it('is beyond doubt where no range touches it', () => {
    expect(plain(oddsSentence({ ...found([]), certain: true }, madeIn(hire), format))).toMatch(
      /^No entry with a range/,
    );
  });

  it('is nothing without draws', () => expect(odds([])).toBe(''));
});
