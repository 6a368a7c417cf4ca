import { describe, expect, it } from 'vitest';
import { quickTornado, tornado, type Bar } from '../../src/study/tornado';
import { shippedModels } from '../model/shippedModels';
import { asked, modelOf } from '../model/table';

/** Bars as `name low high: at low, at high, swing`. */
function said<T extends { toString(): string }>(bars: readonly Bar<T>[]): string[] {
  return bars.map(({ lever, low, high, atLow, atHigh, swing }) => {
    const [from, to, a, b, size] = [low, high, atLow, atHigh, swing].map(String);
    return `${lever.cell.name} ${from ?? ''} ${to ?? ''}: ${a ?? ''}, ${b ?? ''}, ${size ?? ''}`;
  });
}

function bars(text: string, plan?: string, against?: string): string[] {
  const question = asked(modelOf(text), 'r', plan, against);
  const exact = said(tornado(question));
  expect(said(quickTornado(question))).toEqual(exact);
  return exact;
}

describe('a bar', () => {
  it.each([
    ['has the result at both ends of the range', 'a: 2 | range: 1 4\nr: a * 10', ['a 1 4: 10, 40, 30']],
    ['swings the same where the result falls', 'a: 2 | range: 1 4\nr: -a', ['a 1 4: -1, -4, 3']],
    ['of swing 0 is kept', 'a: 2 | range: 1 4\nr: a * 0', ['a 1 4: 0, 0, 0']],
    [
      'of swing 0 is kept for an arm that is not chosen',
      'a: 2 | range: 1 4\nk: 0\nr: k > 0 ? a : 7',
      ['a 1 4: 7, 7, 0'],
    ],
    ['has swing 0 where the result comes back', 'a: 2 | range: -3 3\nr: a ^ 2', ['a -3 3: 9, 9, 0']],
    ['is there where the result is the input', 'r: 2 | range: 1 4', ['r 1 4: 1, 4, 3']],
    ['is there where the range is one number', 'a: 2 | range: 2 2\nr: a', ['a 2 2: 2, 2, 0']],
    [
      'is there for every shape',
      'a: 2 | range: 1 4 normal\nb: 1 | range: 0 1 either\nr: a + b',
      ['a 1 4: 2, 5, 3', 'b 0 1: 2, 3, 1'],
    ],
    ['is there where the value lies outside its range', 'a: 9 | range: 1 4\nr: a', ['a 1 4: 1, 4, 3']],
    ['is not there for an input that does not feed the result', 'a: 2 | range: 1 4\nr: 5', []],
    ['is not there for a certain input', 'a: 2\nr: a', []],
    ['is not there for a calculated cell', 'a: b\nb: 2 | range: 1 4\nr: a', ['b 1 4: 1, 4, 3']],
  ])('%s', (_claim, text, expected) => {
    expect(bars(text)).toEqual(expected);
  });
});

describe('the order', () => {
  const input = (name: string, low: string, high: string) => `${name}: 2 | range: ${low} ${high}`;
  const names = (text: string) => bars(text).map((bar) => bar.split(' ')[0]);

  it.each([
    ['is largest first', [input('a', '1', '3'), input('b', '0', '9'), input('c', '2', '5')], 'a + b + c', 'bca'],
    [
      'of ties is that of the file',
      [input('c', '1', '3'), input('a', '1', '3'), input('b', '1', '3')],
      'a + b + c',
      'cab',
    ],
    ['of ties does not look at the direction', [input('a', '1', '3'), input('b', '1', '3')], 'b - a', 'ab'],
    ['puts a bar without a swing last', [input('a', '0', '4'), input('b', '2', '3')], '1 / a + b', 'ba'],
    ['and after bars of swing 0', [input('a', '0', '4'), input('b', '2', '3')], '1 / a + b * 0', 'ba'],
    [
      'and several in file order',
      [input('b', '0', '4'), input('a', '0', '4'), input('c', '1', '2')],
      '1 / a / b + c',
      'cba',
    ],
  ])('%s', (_claim, inputs, formula, order) => {
    expect(names([...inputs, `r: ${formula}`].join('\n')).join('')).toBe(order);
  });
});

describe('an end that cannot be computed', () => {
  it.each([
    ['at low', 'a: 2 | range: 0 4\nr: 1 / a', 'a 0 4: NaN, 0.25, NaN'],
    ['at high', 'a: 2 | range: 1 4\nr: 1 / (4 - a)', 'a 1 4: 0.3333333333333333333333333333333333, NaN, NaN'],
  ])('%s leaves the other, and no swing', (_claim, text, expected) => {
    expect(said(tornado(asked(modelOf(text), 'r')))).toEqual([expected]);
  });

  it('today does not matter', () => {
    expect(bars('a: 0 | range: -1 4\nr: 1 / a')).toEqual(['a -1 4: -1, 0.25, 1.25']);
  });
});

describe('of two plans', () => {
  it.each([
    [
      'a shared input moves both, and what they have in common falls out',
      'a: 2 | range: 1 4\nb: 3 | in A: 5 | in B: 3\nr: a * b',
      ['a 1 4: 2, 8, 6'],
    ],
    [
      'a shared input that changes both alike has swing 0',
      'a: 2 | range: 1 4\nb: 3 | in A: 5 | in B: 3\nr: a + b',
      ['a 1 4: 2, 2, 0'],
    ],
    [
      'an input that the first plan replaces moves the second only',
      'a: 2 | range: 1 4 | in A: 9\nr: a\nz: 1 | in B: 1',
      ['a 1 4: 8, 5, 3'],
    ],
    [
      'an input that the second plan replaces moves the first only',
      'a: 2 | range: 1 4 | in B: 9\nr: a\nz: 1 | in A: 1\ny: 1 | in B: 1',
      ['a 1 4: -8, -5, 3'],
    ],
    ['an input that both replace has no bar', 'a: 2 | range: 1 4 | in A: 8 | in B: 9\nr: a', []],
    ['an input that only one plan uses', 'a: 2 | range: 1 4\nb: 3 | in A: a | in B: 3\nr: b', ['a 1 4: -2, 1, 3']],
    [
      'an input that only the second plan uses',
      'a: 2 | range: 1 4\nb: 3 | in A: 3 | in B: a\nr: b',
      ['a 1 4: 2, -1, 3'],
    ],
    [
      'an end that one plan cannot compute has none',
      'a: 2 | range: 0 4\nb: 3 | in A: 1 / a | in B: 3\nr: b',
      ['a 0 4: NaN, -2.75, NaN'],
    ],
  ])('%s', (_claim, text, expected) => {
    expect(bars(text, 'A', 'B')).toEqual(expected);
  });
});

it.each(shippedModels)('%s: the quick bars of every headline are the exact ones, in their order', (_file, model) => {
  const [against, plan] = [model.plans[0]?.name, model.plans.at(-1)?.name];
  const questions = model.cells
    .filter(({ role }) => role === 'headline')
    .map(({ name }) => asked(model, name, plan, against));
  const pairs = questions.map((question) => [tornado(question), quickTornado(question)] as const);
  expect(Math.max(...pairs.map(([exact]) => exact.length))).toBeGreaterThan(0);
  for (const [exact, quick] of pairs) {
    const largest = exact[0]?.swing.toNumber() ?? 0;
    expect(quick).toHaveLength(exact.length);
    quick.forEach(({ swing, lever }, i) => {
      expect(Math.abs(swing - exact[i]!.swing.toNumber()), lever.cell.name).toBeLessThanOrEqual(1e-9 * largest);
    });
  }
});
