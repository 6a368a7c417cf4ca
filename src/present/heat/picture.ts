import { fontOf, type ChartInk } from '../picture/ink';
import type { LinesPicture } from '../picture/linesPicture';
import { level as levelLine, ring, upright, written, type Stroke } from '../picture/marks';
import type { Plot } from '../picture/plot';
import type { Path, Spot } from '../../study/contour';
import type { Grid } from '../../study/grid';
import type { Format } from '../text/numberFormat';
import type { HeatBands } from './bands';
import { heatPixels } from './pixels';
import { labelSpot } from './labelPlace';
import { painter, type Shades } from './shades';

/** A point with a sign and a name. */
export interface HeatMark extends Spot {
  readonly text: string;
  /** Today's sign is a cross-hair with a ring, the best one's a square standing on its corner. */
  readonly kind: 'today' | 'best';
}

/** What a heat picture shows. */
export interface HeatDrawing {
  readonly grid: Grid<number>;
  readonly bands: HeatBands;
  /** The side of the level that is hatched as the worse one. */
  readonly worse: 'below' | 'above';
  /** The lines along which the result is at the level, and their label. */
  readonly paths: readonly Path[];
  readonly levelText: string;
  readonly marks: readonly HeatMark[];
  readonly acrossTitle: string;
}

interface Pixels {
  readonly x: number;
  readonly y: number;
}

function shade({ left, right, top, bottom, scale, image }: Plot, drawing: HeatDrawing, shades: Shades): void {
  const [width, height] = [Math.round((right - left) * scale), Math.round((bottom - top) * scale)];
  if (width < 1 || height < 1) return;
  const paint = painter(drawing.bands, drawing.worse, shades, scale);
  image(heatPixels(drawing.grid, width, height, paint), width, height);
}

function inPixels({ x, y }: Plot, spots: readonly Spot[]): Pixels[] {
  return spots.map((spot) => ({ x: x(spot.x), y: y(spot.y) }));
}

/** Draws lines on a wider line in the paper's colour, so that they stand out on any shade. */
function contours({ pen }: Plot, paths: readonly (readonly Pixels[])[], ink: ChartInk): void {
  for (const { colour, width } of [
    { colour: ink.paper, width: 6 },
    { colour: ink.text, width: 2.5 },
  ]) {
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.lineJoin = 'round';
    for (const path of paths) {
      pen.beginPath();
      path.forEach(({ x, y }, k) => (k === 0 ? pen.moveTo(x, y) : pen.lineTo(x, y)));
      pen.stroke();
    }
  }
}

function contourLabel(plot: Plot, paths: readonly (readonly Pixels[])[], drawing: HeatDrawing, ink: ChartInk): void {
  plot.pen.font = `600 ${fontOf(ink)}`;
  const half = plot.pen.measureText(drawing.levelText).width / 2 + 4;
  const at = labelSpot(paths, inPixels(plot, drawing.marks), plot, { x: half, y: ink.size });
  if (at === undefined) return;
  written(plot.pen, drawing.levelText, { ...at, align: 'center', colour: ink.text, ground: ink.paper });
}

function isInside(plot: Plot, mark: Spot): { x: boolean; y: boolean } {
  const [x, y] = [plot.x(mark.x), plot.y(mark.y)];
  return { x: x >= plot.left - 1 && x <= plot.right + 1, y: y >= plot.top - 1 && y <= plot.bottom + 1 };
}

function crossHair(plot: Plot, mark: Spot, ink: ChartInk): void {
  const inside = isInside(plot, mark);
  const strokes: Stroke[] = [
    { colour: ink.paper, width: 3, dash: [] },
    { colour: ink.text, width: 1, dash: [4, 3] },
  ];
  for (const stroke of strokes) {
    if (inside.x) upright(plot, mark.x, stroke);
    if (inside.y) levelLine(plot, mark.y, stroke);
  }
}

function square({ pen, x, y }: Plot, mark: Spot, ink: ChartInk): void {
  const [at, up, reach] = [x(mark.x), y(mark.y), 7];
  pen.beginPath();
  pen.moveTo(at, up - reach);
  for (const [dx, dy] of [
    [reach, 0],
    [0, reach],
    [-reach, 0],
  ] as const)
    pen.lineTo(at + dx, up + dy);
  pen.closePath();
  pen.fillStyle = ink.text;
  pen.fill();
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 2;
  pen.stroke();
}

/** Draws the sign of a mark, with its name on the side that has room; nothing for a mark outside the picture. */
function sign(plot: Plot, mark: HeatMark, ink: ChartInk): void {
  const inside = isInside(plot, mark);
  if (!inside.x || !inside.y) return;
  if (mark.kind === 'best') square(plot, mark, ink);
  else ring(plot, mark, { colour: ink.text, width: 2.5, dash: [] }, ink.paper, 5.5);
  plot.pen.font = `600 ${fontOf(ink)}`;
  const [at, up] = [plot.x(mark.x), plot.y(mark.y)];
  const onRight = at + plot.pen.measureText(mark.text).width + 14 < plot.right;
  const above = up - plot.top > 24;
  written(plot.pen, mark.text, {
    x: at + (onRight ? 10 : -10),
    y: up + (above ? -13 : 14),
    align: onRight ? 'left' : 'right',
    colour: ink.text,
    ground: ink.paper,
  });
}

/** The first and the last number of a grid along one input. */
function ends(nodes: readonly number[]): { min: number; max: number } {
  return { min: nodes[0] ?? 0, max: nodes.at(-1) ?? 1 };
}

/** The drawing of a result over two inputs. */
export function heatPicture(
  drawing: HeatDrawing,
  ink: ChartInk,
  shades: Shades,
  room: { width: number; height: number },
  format: Format,
): LinesPicture {
  return {
    ...room,
    ink,
    padding: { left: 0, right: 10, top: 6, bottom: 0 },
    x: { ...ends(drawing.grid.across), title: drawing.acrossTitle, tick: format.tick },
    y: { ...ends(drawing.grid.down), title: '', tick: format.tick },
    lines: [],
    under: (plot) => shade(plot, drawing, shades),
    over: (plot) => {
      const paths = drawing.paths.map((path) => inPixels(plot, path));
      for (const mark of drawing.marks) if (mark.kind === 'today') crossHair(plot, mark, ink);
      contours(plot, paths, ink);
      contourLabel(plot, paths, drawing, ink);
      for (const mark of drawing.marks) sign(plot, mark, ink);
    },
  };
}
