import { expect, it } from 'vitest';
import { timeLines } from '../../../../src/present/beds/bestWeeks/timeLines';
import { bed, lookOf } from './given';

const hill = '(1000 - ((early - 12 * one) / one) ^ 2 - ((holes - 70 * hole) / hole) ^ 2) * unit';

it('results over the times are drawn at the best density, today’s and both ends, each once', () => {
  const write = (density: number): string => `at ${density}`;
  expect(timeLines(lookOf(bed(hill)), write).map(({ text }) => text)).toEqual(['at 70', 'at 60', 'at 30', 'at 90']);
  const [line] = timeLines(lookOf(bed('(early / one + holes / hole) * unit')), write);
  expect(line).toMatchObject({ row: 12, text: 'at 90' });
  expect(line?.points.slice(0, 2)).toEqual([
    { x: 5, y: 95 },
    { x: 6, y: 96 },
  ]);
});
