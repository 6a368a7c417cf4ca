import { expect, it } from 'vitest';
import { yearsDrawing } from '../../../../src/present/theCase/years/drawing';
import { format } from '../budgets';
import { foundBy } from './machine';

it('the sums so far are drawn with interest and without, ringed where they reach 0', () => {
  const { lines, rings, today, across } = yearsDrawing(foundBy(100, 80, 2, 25), format);
  expect(lines.map(({ label, points }) => [label, ...points.map(({ x, y }) => `${x} ${y}`)])).toEqual([
    ['with interest', '0 -100', '1 -36', '2 15.2'],
    ['without interest', '0 -100', '1 -20', '2 60'],
  ]);
  expect(rings).toEqual([{ x: 1.703125, y: 0 }]);
  expect(today.text).toBe('1.7\u00a0years');
  expect(across.max).toBe(2);
});

it('without interest there is one line, and without payback no ring', () => {
  const { lines, rings, today } = yearsDrawing(foundBy(100, 10, 2), format);
  expect(lines.map(({ label }) => label)).toEqual(['without interest']);
  expect(rings).toEqual([]);
  expect(today.x).toBeLessThan(0);
});

it('a picture of nothing at all has a height', () => {
  const { min, max } = yearsDrawing(foundBy(0, 0, 1), format).heights;
  expect(max).toBeGreaterThan(min);
});
