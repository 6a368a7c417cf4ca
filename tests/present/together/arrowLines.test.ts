import { describe, expect, it } from 'vitest';
import { arrowLines } from '../../../src/present/together/arrowLines';
import { directions } from '../../../src/present/together/choices';
import { evenedOut } from '../../../src/present/together/evenOut';
import { layOut, type Layout } from '../../../src/present/together/layout';
import { shippedModels } from '../../model/shippedModels';
import { wholeRequest } from './laidOut';

const two: Layout = {
  width: 320,
  height: 60,
  direction: 'across',
  boxes: [
    { id: 0, x: 60, y: 30, width: 100, height: 40 },
    { id: 1, x: 260, y: 30, width: 100, height: 40 },
  ],
  arrows: [
    {
      from: 0,
      to: 1,
      points: [
        { x: 110, y: 30 },
        { x: 210, y: 30 },
      ],
    },
  ],
};

/** The numbers in a path, two by two. */
const points = (path: string): number[][] => {
  const numbers = path.match(/-?[\d.]+/g)!.map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, i) => numbers.slice(2 * i, 2 * i + 2));
};

it('a line runs from the edge of one box to the head at the edge of the other', () => {
  const [arrow] = arrowLines(two);
  expect(arrow).toMatchObject({ line: 'M110.0 30.0L202.0 30.0', head: 'M210.0 30.0L202.0 26.5L202.0 33.5Z' });
  expect(arrow!.letterAt).toEqual({ x: 156, y: 30 });
});

it('leads down where the picture does', () => {
  const turn = ({ x, y }: { x: number; y: number }): { x: number; y: number } => ({ x: y, y: x });
  const down = {
    ...two,
    direction: 'down' as const,
    boxes: two.boxes.map((box) => ({ ...box, ...turn(box), width: box.height, height: box.width })),
    arrows: two.arrows.map((arrow) => ({ ...arrow, points: arrow.points.map(turn) })),
  };
  expect(arrowLines(down)[0]!.line).toBe('M30.0 110.0L30.0 202.0');
});

it('an arrow of a circle that leads back leaves and meets its boxes at the sides that face', () => {
  const back = {
    ...two,
    arrows: [
      {
        from: 1,
        to: 0,
        points: [
          { x: 210, y: 30 },
          { x: 110, y: 30 },
        ],
      },
    ],
  };
  expect(arrowLines(back)[0]).toMatchObject({ line: 'M210.0 30.0L118.0 30.0' });
});

it('arrows that meet one side of a box have ends of their own', () => {
  const boxes = [...two.boxes, { id: 2, x: 60, y: 100, width: 100, height: 40 }];
  const arrows = [
    {
      from: 2,
      to: 1,
      points: [
        { x: 110, y: 100 },
        { x: 210, y: 30 },
      ],
    },
    ...two.arrows,
  ];
  const [low, high] = arrowLines({ ...two, boxes, arrows }).map(({ line }) => points(line).at(-1)![1]!);
  expect(low! - high!).toBe(9);
});

describe.each(shippedModels)('in the picture of %s', (_file, model) => {
  it.each(directions)('no arrow runs through a box, arrows leading %s', (direction) => {
    const laid = evenedOut(layOut(wholeRequest(model, direction)));
    const through = arrowLines(laid).flatMap(({ from, to, line }) =>
      samples(line).flatMap(([x, y]) =>
        laid.boxes.filter(
          (box) =>
            box.id !== from &&
            box.id !== to &&
            Math.abs(x - box.x) < box.width / 2 - 1 &&
            Math.abs(y - box.y) < box.height / 2 - 1,
        ),
      ),
    );
    expect(through).toEqual([]);
  });
});

/** Points along a path of lines and cubic curves (SVG 2, 9.3). */
function samples(path: string): [x: number, y: number][] {
  let at = [0, 0];
  return [...path.matchAll(/([MLC])([^MLC]*)/g)].flatMap(([, kind, text]) => {
    const found = points(text!);
    const [start, end] = [at, found.at(-1)!];
    at = end;
    if (kind === 'M') return [];
    const [a, b] = kind === 'C' ? [found[0]!, found[1]!] : [start, end];
    return Array.from({ length: 21 }, (_, i): [number, number] => {
      const t = i / 20;
      const on = (k: number): number =>
        (1 - t) ** 3 * start[k]! + 3 * (1 - t) ** 2 * t * a[k]! + 3 * (1 - t) * t ** 2 * b[k]! + t ** 3 * end[k]!;
      return [on(0), on(1)];
    });
  });
}
