import type { Layout, Point } from './layout';

/** What takes room in a rank: a box, or an arrow that passes. */
interface Stop {
  /** From the middle to either side, across the arrows. */
  readonly half: number;
  readonly isBox: boolean;
  /** What arrows join to it in other ranks, with how hard each pulls. */
  readonly pulls: { readonly other: Stop; readonly weight: number }[];
  across: number;
}

/** Least room in pixels: between two boxes, a box and an arrow, and two arrows; and around everything. */
const room = { boxes: 14, beside: 12, arrows: 7, rim: 8 };

/** How hard an arrow pulls between two boxes, a box and its own passing, and two passings (Gansner 1993, 4.2). */
const pull = { boxes: 1, end: 2, passing: 8 };
/** How hard the middle of the picture pulls, so that what hangs on nothing does not stand far away. */
const inward = 0.02;
const rounds = 60;

function gap(a: Stop, b: Stop): number {
  const between = a.isBox && b.isBox ? room.boxes : a.isBox || b.isBox ? room.beside : room.arrows;
  return a.half + between + b.half;
}

/**
 * Moves the stops of a rank as near to where they are pulled as their order and the gaps allow: least squares under an
 * order (isotonic regression), by pooling adjacent violators.
 */
function settle(rank: readonly Stop[], middle: number): void {
  const pools: { sum: number; weight: number; count: number }[] = [];
  const offsets: number[] = [];
  rank.forEach((stop, i) => {
    const before = rank[i - 1];
    offsets.push(before === undefined ? 0 : offsets[i - 1]! + gap(before, stop));
    const weight = stop.pulls.reduce((sum, one) => sum + one.weight, inward);
    const sum = stop.pulls.reduce((all, { other, weight: w }) => all + w * other.across, inward * middle);
    pools.push({ sum: sum - weight * offsets[i]!, weight, count: 1 });
    for (;;) {
      const [a, b] = pools.slice(-2);
      if (a === undefined || b === undefined || a.sum / a.weight <= b.sum / b.weight) break;
      pools.splice(-2, 2, { sum: a.sum + b.sum, weight: a.weight + b.weight, count: a.count + b.count });
    }
  });
  let i = 0;
  for (const { sum, weight, count } of pools) {
    for (const end = i + count; i < end; i += 1) rank[i]!.across = sum / weight + offsets[i]!;
  }
}

/** The stops of a layout: of each box, and of each arrow its two boxes and what it passes between them. */
interface Stops {
  readonly boxes: ReadonlyMap<number, Stop>;
  /** In the order of the layout's arrows. */
  readonly ways: readonly { readonly points: readonly Point[]; readonly stops: readonly Stop[] }[];
  /** By rank along the arrows, each in its order across them. */
  readonly ranks: readonly (readonly Stop[])[];
}

function join(stops: readonly Stop[]): void {
  stops.forEach((stop, i) => {
    const next = stops[i + 1];
    if (next === undefined) return;
    const weight = stop.isBox && next.isBox ? pull.boxes : stop.isBox || next.isBox ? pull.end : pull.passing;
    stop.pulls.push({ other: next, weight });
    next.pulls.push({ other: stop, weight });
  });
}

function stopsOf(layout: Layout): Stops {
  const isAcross = layout.direction === 'across';
  const along = ({ x, y }: Point): number => Math.round(isAcross ? x : y);
  const ranks = new Map<number, Stop[]>();
  const stopAt = (point: Point, half: number, isBox: boolean): Stop => {
    const stop = { half, isBox, pulls: [], across: isAcross ? point.y : point.x };
    ranks.set(along(point), [...(ranks.get(along(point)) ?? []), stop]);
    return stop;
  };
  const boxes = new Map(
    layout.boxes.map((box) => [box.id, stopAt(box, (isAcross ? box.height : box.width) / 2, true)]),
  );
  const isRank = new Set(ranks.keys());
  const ways = layout.arrows.map(({ from, to, points }) => {
    const passed = points.slice(1, -1).filter((point) => isRank.has(along(point)));
    const stops = [boxes.get(from)!, ...passed.map((point) => stopAt(point, 0, false)), boxes.get(to)!];
    join(stops);
    return { points: [points[0]!, ...passed, points.at(-1)!], stops };
  });
  const inOrder = [...ranks].sort(([a], [b]) => a - b);
  return { boxes, ways, ranks: inOrder.map(([, rank]) => rank.sort((a, b) => a.across - b.across)) };
}

/**
 * The same layout with the boxes of each rank in the same order, but nearer to what they are joined to: the picture
 * becomes much smaller across the arrows, and long arrows straight. An arrow keeps a point at each rank that it passes.
 */
export function evenedOut(layout: Layout): Layout {
  if (layout.boxes.length === 0) return layout;
  const { boxes, ways, ranks } = stopsOf(layout);
  const all = ranks.flat();
  for (let round = 0; round < rounds; round += 1) {
    const middle = all.reduce((sum, stop) => sum + stop.across, 0) / all.length;
    for (const rank of round % 2 === 0 ? ranks : [...ranks].reverse()) settle(rank, middle);
  }
  const first = Math.min(...all.map((stop) => stop.across - stop.half)) - room.rim;
  const size = Math.ceil(Math.max(...all.map((stop) => stop.across + stop.half)) + room.rim - first);
  const isAcross = layout.direction === 'across';
  const moved = <P extends Point>(point: P, { across }: Stop): P => ({
    ...point,
    [isAcross ? 'y' : 'x']: across - first,
  });
  return {
    ...layout,
    [isAcross ? 'height' : 'width']: size,
    boxes: layout.boxes.map((box) => moved(box, boxes.get(box.id)!)),
    arrows: layout.arrows.map((arrow, a) => {
      const { points, stops } = ways[a]!;
      return { ...arrow, points: points.map((point, i) => moved(point, stops[i]!)) };
    }),
  };
}
