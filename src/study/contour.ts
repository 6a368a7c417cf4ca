import type { Grid } from './grid';

/** A place between the nodes of a grid. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A line along which a result meets a level; a closed one ends where it starts. */
export type Path = readonly Spot[];

/** An edge of the grid by number: even from a node to the next one in its row, odd from a node to the next row. */
type Edge = number;

/** The four edges of a square of nodes, and the sides of its corners in turn, starting at its first node. */
interface Square {
  readonly low: Edge;
  readonly right: Edge;
  readonly high: Edge;
  readonly left: Edge;
  readonly corners: readonly [number, number, number, number];
}

function squareAt({ across, values }: Grid<number>, i: number, j: number): Square {
  const node = (di: number, dj: number): number => (j + dj) * across.length + i + di;
  const value = (di: number, dj: number): number => values[j + dj]?.[i + di] ?? NaN;
  return {
    low: 2 * node(0, 0),
    right: 2 * node(1, 0) + 1,
    high: 2 * node(0, 1),
    left: 2 * node(0, 0) + 1,
    corners: [value(0, 0), value(1, 0), value(1, 1), value(0, 1)],
  };
}

/**
 * The pairs of a square's edges that lines connect. At a saddle the mean of the four corners decides between the two
 * ways.
 */
function joins({ low, right, high, left, corners }: Square, level: number): (readonly [Edge, Edge])[] {
  if (!corners.every((value) => Number.isFinite(value))) return [];
  const [a, b, c, d] = corners.map((value) => value >= level) as [boolean, boolean, boolean, boolean];
  if (a === c && b === d && a !== b) {
    const middle = corners.reduce((sum, value) => sum + value / 4, 0) >= level;
    return middle === a
      ? [
          [low, right],
          [high, left],
        ]
      : [
          [left, low],
          [right, high],
        ];
  }
  const crossed = [a !== b && low, b !== c && right, c !== d && high, d !== a && left].filter((edge) => edge !== false);
  const [from, to] = crossed;
  return from === undefined || to === undefined ? [] : [[from, to]];
}

/** For each edge crossed by a line, the edges it is connected to: at most two. */
function linksOf(grid: Grid<number>, level: number): Map<Edge, Edge[]> {
  const links = new Map<Edge, Edge[]>();
  const link = (from: Edge, to: Edge): void => {
    links.set(from, [...(links.get(from) ?? []), to]);
  };
  for (let j = 0; j + 1 < grid.down.length; j += 1) {
    for (let i = 0; i + 1 < grid.across.length; i += 1) {
      for (const [from, to] of joins(squareAt(grid, i, j), level)) {
        link(from, to);
        link(to, from);
      }
    }
  }
  return links;
}

/** Follows connected edges from one of them to the line's end or back to its start, and removes them. */
function follow(links: Map<Edge, Edge[]>, start: Edge): Edge[] {
  const trail = [start];
  for (;;) {
    const at = trail.at(-1)!;
    const next = links.get(at)?.shift();
    if (next === undefined) return trail;
    const back = links.get(next) ?? [];
    back.splice(back.indexOf(at), 1);
    trail.push(next);
  }
}

/** The point on an edge at which the result is at the level, interpolated linearly. */
function spotOn({ across, down, values }: Grid<number>, level: number, edge: Edge): Spot {
  const node = Math.floor(edge / 2);
  const [i, j] = [node % across.length, Math.floor(node / across.length)];
  const [di, dj] = edge % 2 === 0 ? [1, 0] : [0, 1];
  const [from, to] = [values[j]![i]!, values[j + dj]![i + di]!];
  const share = (level - from) / (to - from);
  const between = (a: number, b: number): number => a + share * (b - a);
  return { x: between(across[i]!, across[i + di]!), y: between(down[j]!, down[j + dj]!) };
}

/**
 * The lines along which a result over two inputs is at a level: marching squares, the form in the plane of marching
 * cubes (Lorensen & Cline, Computer Graphics 21(4), 1987, 163–169). A square with a corner that is NaN holds no line. A
 * result exactly at the level counts as above it. Results are interpolated linearly between nodes, so a jump is drawn
 * half-way.
 */
export function contour(grid: Grid<number>, level: number): Path[] {
  const links = linksOf(grid, level);
  const ends = [...links].filter(([, joined]) => joined.length === 1).map(([edge]) => edge);
  const starts = [...ends, ...links.keys()];
  const trails = starts.map((start) => follow(links, start)).filter(({ length }) => length > 1);
  return trails.map((trail) => trail.map((edge) => spotOn(grid, level, edge)));
}
