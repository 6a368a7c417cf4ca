import { Graph, layout } from '@dagrejs/dagre';
import type { Direction } from './choices';

export interface BoxSize {
  readonly id: number;
  readonly width: number;
  readonly height: number;
}

/** What is to be laid out; lengths in pixels. */
export interface LayoutRequest {
  readonly boxes: readonly BoxSize[];
  /** None from a box to itself, and at most one from a box to another. */
  readonly arrows: readonly { readonly from: number; readonly to: number }[];
  readonly direction: Direction;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A box by its middle. */
export type PlacedBox = BoxSize & Point;

/** An arrow by the points through which it passes, the first and the last at the edges of its boxes. */
export interface PlacedArrow {
  readonly from: number;
  readonly to: number;
  readonly points: readonly Point[];
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly direction: Direction;
  readonly boxes: readonly PlacedBox[];
  readonly arrows: readonly PlacedArrow[];
}

/** Between boxes of one rank, between a box and an arrow, between ranks, and around everything. */
const room = { nodesep: 14, edgesep: 10, ranksep: 52, marginx: 8, marginy: 8 };

/**
 * Boxes in ranks, each after all from which arrows lead to it, with few crossings: the layered way of Sugiyama, Tagawa
 * and Toda (1981), ranks by the network simplex of Gansner and others (1993). The same request has the same layout.
 * Arrows of a circle that close it point backward.
 */
export function layOut({ boxes, arrows, direction }: LayoutRequest): Layout {
  const graph = new Graph<object, PlacedBox, { points: readonly Point[] }>();
  graph.setGraph({ rankdir: direction === 'across' ? 'LR' : 'TB', ...room });
  for (const box of boxes) graph.setNode(String(box.id), { ...box, x: 0, y: 0 });
  for (const { from, to } of arrows) graph.setEdge(String(from), String(to), { points: [] });
  if (boxes.length > 0) layout(graph);
  const { width = 0, height = 0 } = graph.graph() as { width?: number; height?: number };
  return {
    width: Math.ceil(width),
    height: Math.ceil(height),
    direction,
    boxes: boxes.map(({ id, width: wide, height: high }) => {
      const { x, y } = graph.node(String(id));
      return { id, x, y, width: wide, height: high };
    }),
    arrows: arrows.map(({ from, to }) => {
      const { points } = graph.edge(String(from), String(to));
      return { from, to, points: points.map(({ x, y }) => ({ x, y })) };
    }),
  };
}
