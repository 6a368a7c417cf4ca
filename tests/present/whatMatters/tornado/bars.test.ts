import { describe, expect, it } from 'vitest';
import { tornado } from '../../../../src/study/tornado';
import { exactBars, barsInOrder, quickBars, type ShownBar } from '../../../../src/present/whatMatters/tornado/bars';
import { lastBars, tornadoOf } from '../farm';

const names = (bars: readonly Pick<ShownBar, 'lever'>[]): string => bars.map(({ lever }) => lever.cell.name).join(' ');

const many = [
  ...Array.from({ length: 30 }, (_, k) => `x${k}: 5 | range: ${5 - ((k * 7) % 5)} ${6 + ((k * 11) % 13)}`),
  'zero: 1 | range: 0 2',
  `r: ${Array.from({ length: 30 }, (_, k) => `x${k}`).join(' + ')} + 1 / zero`,
].join('\n');

const ends = (bars: readonly ShownBar[]): string[] =>
  bars.map(({ low, high }) => `${low.toString()} ${high.toString()}`);

describe('a tornado in steps', () => {
  const { question } = tornadoOf(many, 'alone');

  it('ends as the one in a piece does', () => {
    const whole = tornado(question);
    expect(names(lastBars(exactBars(question)))).toBe(names(whole));
    const swings = (bars: readonly ShownBar[]): string[] => bars.map(({ swing }) => swing.toString());
    expect(swings(lastBars(exactBars(question)))).toEqual(swings(whole));
  });

  it('of the difference of two plans as well', () => {
    const text = 'a: 3 | range: 1 4\nb: 2 | range: 1 9\nk: 1 | in A: 1 | in B: 3\nr: a * k + b * k - b';
    const both = tornadoOf(text, 'difference').question;
    expect(names(lastBars(exactBars(both)))).toBe(names(tornado(both)));
  });

  it('takes more than one step and says how far it is', () => {
    const shares = [...quickBars(question)].map(({ share }) => share);
    expect(shares.length).toBeGreaterThan(3);
    expect(shares.at(-1)).toBe(1);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  });

  it('has the same bars in float64, with the ends of the ranges as they were typed', () => {
    const quick = lastBars(quickBars(question));
    const exact = lastBars(exactBars(question));
    expect(names(quick)).toBe(names(exact));
    expect(ends(quick)).toEqual(ends(exact));
    quick.forEach(({ swing }, i) => {
      if (swing.isNaN()) expect(exact[i]!.swing.isNaN()).toBe(true);
      else expect(swing.toNumber()).toBeCloseTo(exact[i]!.swing.toNumber(), 9);
    });
  });
});

describe('bars stand in order', () => {
  const { bars } = tornadoOf(
    'a: 1 | range: 0 2\nb: 1 | range: 0 3\nc: 1 | range: 0 3\nd: 1 | range: 0 2\nr: a + b + c + 1 / d',
    'alone',
  );
  it('largest first, ties as in the file, an unknown one last', () => {
    expect(names(bars)).toBe('b c a d');
    expect(names(barsInOrder([...bars].reverse()))).toBe('b c a d');
  });
});
