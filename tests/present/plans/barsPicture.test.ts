import { expect, test } from 'vitest';
import type { ChartInk } from '../../../src/present/picture/ink';
import type { Fill, Pen } from '../../../src/present/picture/pen';
import type { Plot } from '../../../src/present/picture/plot';
import { barsPicture, type PlanBars } from '../../../src/present/plans/barsPicture';
import { format } from './given';

const ink: ChartInk = {
  text: 'text',
  quiet: 'quiet',
  hair: 'hair',
  family: 'serif',
  size: 13,
  paper: 'paper',
  mark: 'mark',
  planA: 'blue',
  planB: 'red',
  fault: 'fault',
  measure: (text) => 7 * text.length,
  hatched: (colour) => `hatched ${colour}`,
};

const bars: PlanBars = {
  names: ['Today', 'Wider boards', 'A name that is far too long for its place', 'Broken'],
  letters: ['A', '', 'B', ''],
  values: [10, -5, 20, NaN],
  texts: ['10', '−5', '20', 'no value'],
};

/** What a picture writes and fills, in order; a pixel is a unit of the axis. */
function drawn(width: number): { written: string[]; filled: Fill[]; widths: number[] } {
  const [written, filled, widths] = [[] as string[], [] as Fill[], [] as number[]];
  const pen = {
    beginPath: () => undefined,
    moveTo: () => undefined,
    lineTo: () => undefined,
    stroke: () => undefined,
    setLineDash: () => undefined,
    strokeRect: () => undefined,
    fillStyle: '' as Fill,
    fillRect: (_x: number, _y: number, wide: number) => {
      filled.push(pen.fillStyle);
      widths.push(wide);
    },
    fillText: (text: string) => written.push(text),
  };
  const plot = { pen: pen as unknown as Pen, width, x: (value: number) => value, y: (row: number) => row } as Plot;
  const picture = barsPicture(bars, ink, width, format);
  picture.under(plot);
  picture.over(plot);
  return { written, filled, widths };
}

test('a bar goes from 0 to each number: filled for A, hatched for B, outlined else, none without a number', () => {
  expect(drawn(400).filled).toEqual(['blue', 'paper', 'hatched red']);
  expect(drawn(400).widths).toEqual([9, 4, 19]);
});

test('each bar stands between its plan, cut where it is long, and its number', () => {
  expect(drawn(400).written).toEqual([
    'A Today',
    '10',
    'Wider boards',
    '−5',
    'B A name that is far…',
    '20',
    'Broken',
    'no value',
  ]);
});

test('0 is on the axis, wherever the numbers lie', () => {
  const axis = (values: readonly number[]) => {
    const { min, max } = barsPicture({ ...bars, values }, ink, 400, format).x;
    return [min, max];
  };
  expect(axis(bars.values)).toEqual([-5, 20]);
  expect(axis([3, 4, 5, 6])).toEqual([0, 6]);
  expect(axis([-3, -4, -5, -6])).toEqual([-6, 0]);
  expect(axis([0, 0, NaN, NaN])).toEqual([0, 1]);
});

test('each plan more makes it higher', () => {
  const height = (count: number): number =>
    barsPicture({ ...bars, names: bars.names.slice(0, count) }, ink, 400, format).height;
  expect(height(4) - height(3)).toBe(height(3) - height(2));
});
