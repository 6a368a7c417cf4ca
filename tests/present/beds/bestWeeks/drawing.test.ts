import { describe, expect, it } from 'vitest';
import { numberToText } from '../../../../src/core/number';
import { drawingOf, tableRequestOf } from '../../../../src/present/beds/bestWeeks/drawing';
import { timeLines } from '../../../../src/present/beds/bestWeeks/timeLines';
import { bed, lookOf } from './given';

const top = (days: number, holes: number): string =>
  `(1000 - ((early - ${days} * one) / one) ^ 2 - ((holes - ${holes} * hole) / hole) ^ 2) * unit`;

describe('the picture of the best weeks', () => {
  it('marks today and the best', () => {
    const { marks } = drawingOf(lookOf(bed(top(12, 70))));
    expect(marks).toEqual([
      { x: 10, y: 60, text: 'today', kind: 'today' },
      { x: 12, y: 70, text: 'best', kind: 'best' },
    ]);
  });

  it('with one mark where they are the same', () => {
    expect(drawingOf(lookOf(bed(top(10, 60)))).marks).toEqual([
      { x: 10, y: 60, text: 'today, the best', kind: 'today' },
    ]);
  });

  it('hatches what is worse than today: below where the highest is best, above where the lowest is', () => {
    expect(drawingOf(lookOf(bed(top(12, 70)))).worse).toBe('below');
    expect(drawingOf(lookOf(bed(top(12, 70)), {}, 'lowest')).worse).toBe('above');
  });

  it('draws the line where the result is as today', () => {
    const { paths } = drawingOf(lookOf(bed('early / one * unit + holes * 0 * unit / hole'), { held: 'next' }));
    expect(paths.flat().every(({ x }) => x === 10)).toBe(true);
    expect(paths).toHaveLength(1);
  });
});

describe('the table of the best weeks', () => {
  const result = lookOf(bed(top(11, 75)));
  const lines = timeLines(result, String);
  const ask = tableRequestOf(result, lines, {
    result: result.ask.question.view.model.cells[0]!,
    caption: 'Margin',
    worseText: 'worse',
  });

  it('has today’s numbers, the best ones, and every density that has a line', () => {
    expect(ask.across.places.map(numberToText)).toEqual(expect.arrayContaining(['10', '11']));
    expect(ask.down.places.map(numberToText)).toEqual(expect.arrayContaining(['60', '75', '30', '90']));
  });

  it('signs what is worse than today', () => {
    const today = result.ask.question.base;
    expect([today.minus(1), today, today.plus(1)].map(ask.isWorse)).toEqual([true, false, false]);
  });
});
