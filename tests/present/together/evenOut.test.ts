import { expect, it } from 'vitest';
import { evenedOut } from '../../../src/present/together/evenOut';
import type { Layout } from '../../../src/present/together/layout';

const box = (id: number, x: number, y: number): Layout['boxes'][number] => ({ id, x, y, width: 100, height: 40 });

/** Three in a row, and one far above the middle one. */
const scattered: Layout = {
  width: 600,
  height: 1000,
  direction: 'across',
  boxes: [box(0, 100, 500), box(1, 300, 900), box(2, 500, 500), box(3, 300, 100)],
  arrows: [
    {
      from: 0,
      to: 1,
      points: [
        { x: 150, y: 500 },
        { x: 250, y: 900 },
      ],
    },
    {
      from: 1,
      to: 2,
      points: [
        { x: 350, y: 900 },
        { x: 450, y: 500 },
      ],
    },
    {
      from: 0,
      to: 2,
      points: [
        { x: 150, y: 500 },
        { x: 200, y: 400 },
        { x: 300, y: 400 },
        { x: 450, y: 500 },
      ],
    },
  ],
};
const evened = evenedOut(scattered);

it('keeps the order of the boxes of a rank, and the arrow that passes between them', () => {
  const at = (id: number): number => evened.boxes.find((one) => one.id === id)!.y;
  const passing = evened.arrows[2]!.points[1]!.y;
  expect(at(3)).toBeLessThan(passing);
  expect(passing).toBeLessThan(at(1));
});

it('brings them near, with room between', () => {
  const [below, above] = [1, 3].map((id) => evened.boxes.find((one) => one.id === id)!.y);
  expect(below! - above!).toBeGreaterThan(40 + 14);
  expect(evened.height).toBeLessThan(250);
});

it('moves nothing along the arrows', () => {
  expect(evened.boxes.map(({ x }) => x)).toEqual(scattered.boxes.map(({ x }) => x));
  expect(evened.width).toBe(600);
});

it('keeps of an arrow its ends and its points at ranks', () => {
  expect(evened.arrows[2]!.points.map(({ x }) => x)).toEqual([150, 300, 450]);
});
