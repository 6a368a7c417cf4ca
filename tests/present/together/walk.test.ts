import { expect, it } from 'vitest';
import type { Layout } from '../../../src/present/together/layout';
import { boxTowards } from '../../../src/present/together/walk';

const box = (id: number, x: number, y: number): Layout['boxes'][number] => ({ id, x, y, width: 10, height: 10 });

/** 0 and 1 lead to 2; 3 stands beside 2 and hangs on nothing. */
const layout: Layout = {
  width: 100,
  height: 100,
  direction: 'across',
  boxes: [box(0, 10, 10), box(1, 10, 40), box(2, 50, 60), box(3, 50, 12)],
  arrows: [
    { from: 0, to: 2, points: [] },
    { from: 1, to: 2, points: [] },
  ],
};

it.each([
  ['along an arrow, though another box is nearer', 0, 'ArrowRight', 2],
  ['back along an arrow, to the nearer of two', 2, 'ArrowLeft', 1],
  ['to the nearest box where no arrow leads that way', 3, 'ArrowLeft', 0],
  ['to the next below', 0, 'ArrowDown', 1],
  ['to the next above', 2, 'ArrowUp', 3],
  ['nowhere where no box lies', 0, 'ArrowLeft', undefined],
  ['nowhere for another key', 0, 'Tab', undefined],
])('goes %s', (_claim, from, key, to) => {
  expect(boxTowards(layout, from, key)).toBe(to);
});
