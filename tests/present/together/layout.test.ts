import { describe, expect, it } from 'vitest';
import { directions } from '../../../src/present/together/choices';
import { evenedOut } from '../../../src/present/together/evenOut';
import { layOut, type Layout } from '../../../src/present/together/layout';
import { shippedModels } from '../../model/shippedModels';
import { overlap, wholeRequest } from './laidOut';

const box = (id: number): { id: number; width: number; height: number } => ({ id, width: 100, height: 40 });

describe.each(shippedModels)('the picture of the whole of %s', (_file, model) => {
  describe.each(directions)('with arrows that lead %s', (direction) => {
    const request = wholeRequest(model, direction);
    const first = layOut(request);
    const evened = evenedOut(first);
    const both: [string, Layout][] = [
      ['as it is laid out', first],
      ['evened out', evened],
    ];

    it.each(both)('has every entry and every arrow, %s', (_when, { boxes, arrows }) => {
      expect(boxes.map(({ id }) => id)).toEqual(model.cells.map(({ id }) => id));
      expect(arrows.length).toBe(request.arrows.length);
    });

    it.each(both)('has no two boxes that overlap, %s', (_when, { boxes }) => {
      const pairs = boxes.flatMap((a, i) => boxes.slice(i + 1).filter((b) => overlap(a, b)));
      expect(pairs).toEqual([]);
    });

    it.each(both)('has all boxes inside, %s', (_when, { boxes, width, height }) => {
      for (const { x, y, width: wide, height: high } of boxes) {
        expect(Math.min(x - wide / 2, y - high / 2)).toBeGreaterThanOrEqual(0);
        expect(x + wide / 2).toBeLessThanOrEqual(width);
        expect(y + high / 2).toBeLessThanOrEqual(height);
      }
    });

    it.each(both)('has arrows that lead forward all the way, from box to box, %s', (_when, { boxes, arrows }) => {
      const placed = new Map(boxes.map((one) => [one.id, one]));
      const along = ({ x, y }: { x: number; y: number }): number => (direction === 'across' ? x : y);
      const long = (id: number): number => placed.get(id)![direction === 'across' ? 'width' : 'height'];
      for (const { from, to, points } of arrows) {
        const [start, end] = [along(placed.get(from)!) + long(from) / 2, along(placed.get(to)!) - long(to) / 2];
        expect(start).toBeLessThan(end);
        points.forEach((point, i) => expect(along(point)).toBeGreaterThanOrEqual(along(points[i - 1] ?? point)));
      }
    });

    it('is smaller across its arrows once it is evened out, and as long', () => {
      const [across, along] = direction === 'across' ? (['height', 'width'] as const) : (['width', 'height'] as const);
      expect(evened[across]).toBeLessThan(first[across]);
      expect(evened[along]).toBe(first[along]);
    });
  });
});

it('the same request has the same layout', () => {
  const request = { boxes: [box(0), box(1), box(2)], arrows: [{ from: 0, to: 2 }], direction: 'across' } as const;
  expect(layOut(request)).toEqual(layOut(request));
});

it('nothing has a layout of nothing', () => {
  const nothing = layOut({ boxes: [], arrows: [], direction: 'down' });
  expect(evenedOut(nothing)).toEqual({ width: 0, height: 0, direction: 'down', boxes: [], arrows: [] });
});

it('a circle is laid out too, with one arrow that leads back', () => {
  const arrows = [
    { from: 0, to: 1 },
    { from: 1, to: 2 },
    { from: 2, to: 0 },
  ];
  const laid = evenedOut(layOut({ boxes: [box(0), box(1), box(2)], arrows, direction: 'across' }));
  const x = new Map(laid.boxes.map((one) => [one.id, one.x]));
  expect(arrows.filter(({ from, to }) => x.get(from)! > x.get(to)!)).toHaveLength(1);
});
