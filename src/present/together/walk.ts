import type { Layout, PlacedBox, Point } from './layout';

/** The keys that lead from box to box. */
const ways: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

function nearestTo(from: Point, boxes: readonly PlacedBox[], [x, y]: readonly [number, number]): number | undefined {
  // What lies aside counts twice: straight on is nearer.
  const far = (box: Point): number => {
    const [right, down] = [box.x - from.x, box.y - from.y];
    return right * x + down * y + 2 * Math.abs(right * y + down * x);
  };
  return [...boxes].sort((a, b) => far(a) - far(b))[0]?.id;
}

/**
 * The box to which a key leads: along the arrows to the nearest that an arrow joins to it, else to the nearest that
 * lies there. Undefined where there is none, or for any other key.
 */
export function boxTowards(layout: Layout, id: number, key: string): number | undefined {
  const way = ways[key];
  const from = layout.boxes.find((box) => box.id === id);
  if (way === undefined || from === undefined) return undefined;
  const ahead = layout.boxes.filter((box) => (box.x - from.x) * way[0] + (box.y - from.y) * way[1] > 1);
  const joined = new Set(
    layout.arrows.flatMap((arrow) => (arrow.from === id ? arrow.to : arrow.to === id ? arrow.from : [])),
  );
  const isAlong = (layout.direction === 'across') === (way[1] === 0);
  const linked = isAlong ? ahead.filter((box) => joined.has(box.id)) : [];
  return nearestTo(from, linked.length > 0 ? linked : ahead, way);
}
