import type { Format } from '../text/numberFormat';
import { fontOf, type ChartInk } from './ink';
import type { DrawnLine, LinesPicture } from './linesPicture';
import { level, ring, upright, written } from './marks';
import type { Plot } from './plot';

/** A colour of a line, and its dashes. */
export interface LineLook {
  readonly colour: 'planA' | 'planB' | 'text';
  readonly dash: readonly number[];
}

/** A line with the label at its end. */
interface LabelledLine {
  /** Stands before the label; without it the line's number does. */
  readonly mark?: string;
  readonly label: string;
  /** Without it the line is in ink, with dashes by its place. */
  readonly look?: LineLook;
  /** Ascending in x; NaN where there is a gap. */
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** Whether the sentence beside the chart is about this line. */
  readonly leading: boolean;
}

/** Several lines over one axis, told apart by their dashes and by the labels at their right ends. */
export interface LinesDrawing {
  readonly lines: readonly LabelledLine[];
  readonly across: { readonly min: number; readonly max: number; readonly title: string; readonly tickAfter: string };
  readonly heights: { readonly min: number; readonly max: number };
  /** An upright line where the input stands today. */
  readonly today: { readonly x: number; readonly text: string };
  /** Heights of level lines: the result today, and 0 where it matters. */
  readonly levels: readonly number[];
  readonly rings: readonly { readonly x: number; readonly y: number; readonly text?: string }[];
}

/** Dash patterns by a line's index; as many as can be told apart. */
export const dashes: readonly (readonly number[])[] = [[], [9, 5], [2, 3], [12, 4, 2, 4], [5, 3], [14, 3, 2, 3, 2, 3]];

const top = 26;
/** Pixels from the plot to the labels beside it; the leader lines cross this gap. */
const gap = 18;

/** Heights moved so that they are at least a distance apart, in the same order and within limits. */
export function spacedOut(heights: readonly number[], apart: number, from: number, to: number): number[] {
  const order = heights.map((_, i) => i).sort((i, j) => heights[i]! - heights[j]!);
  const placed = [...heights];
  let least = from;
  for (const i of order) {
    placed[i] = Math.max(placed[i]!, least);
    least = placed[i] + apart;
  }
  let most = to;
  for (const i of order.reverse()) {
    placed[i] = Math.min(placed[i]!, most);
    most = placed[i] - apart;
  }
  return placed;
}

/** A label shortened to a width. */
export function cut(label: string, width: number, measure: (text: string) => number): string {
  if (measure(label) <= width) return label;
  let length = label.length;
  while (length > 1 && measure(`${label.slice(0, length).trimEnd()}…`) > width) length -= 1;
  return `${label.slice(0, length).trimEnd()}…`;
}

/** What stands before a line's name: its mark, as the letter of a plan, else its number. */
export function markOf({ mark }: Pick<LabelledLine, 'mark'>, place: number): string {
  return mark ?? String(place + 1);
}

/** How a line is drawn, in the chart and in its key. */
export function lineStyle(
  { look, leading }: Pick<LabelledLine, 'look' | 'leading'>,
  place: number,
): LineLook & { readonly width: number } {
  const { colour, dash } = look ?? { colour: 'text', dash: dashes[place % dashes.length]! };
  return { colour, dash, width: leading ? 3 : 1.75 };
}

function linesOf({ lines }: LinesDrawing, ink: ChartInk): DrawnLine[] {
  return lines.map((line, place) => {
    const { colour, dash, width } = lineStyle(line, place);
    return { points: line.points, colour: ink[colour], width, dash };
  });
}

/** Draws the labels beside the plot, each with a leader line from the end of its line. */
function endLabels(plot: Plot, { lines }: LinesDrawing, ink: ChartInk): void {
  const { pen, top, bottom, right } = plot;
  pen.font = fontOf(ink);
  const ended = lines.flatMap((line) => {
    const end = line.points.findLast(({ y }) => !Number.isNaN(y));
    if (end === undefined) return [];
    return [{ line, x: plot.x(end.x), y: Math.min(Math.max(plot.y(end.y), top), bottom) }];
  });
  const ys = spacedOut(
    ended.map(({ y }) => y),
    ink.size + 4,
    top + 4,
    bottom - 4,
  );
  ended.forEach(({ line, x, y }, i) => {
    pen.beginPath();
    pen.moveTo(x + 2, y);
    if (x < right) pen.lineTo(right, y);
    pen.lineTo(right + gap - 4, ys[i]!);
    pen.strokeStyle = ink.hair;
    pen.lineWidth = 1;
    pen.stroke();
    const colour = ink[line.look?.colour ?? 'text'];
    written(pen, line.label, { x: right + gap, y: ys[i]!, align: 'left', colour, ground: ink.paper });
  });
}

function today(plot: Plot, { today: { x, text } }: LinesDrawing, ink: ChartInk): void {
  const at = plot.x(x);
  if (at < plot.left - 1 || at > plot.right + 1) return;
  upright(plot, x, { colour: ink.text, width: 1.25, dash: [] }, 4);
  plot.pen.font = fontOf(ink);
  const half = plot.pen.measureText(text).width / 2;
  const middle = Math.min(Math.max(at, half), plot.width - half);
  written(plot.pen, text, { x: middle, y: top - 14, align: 'center', colour: ink.text, ground: ink.paper });
}

/** Draws the rings, each with its text above it; a text that would run into the one before it is left out. */
function ringed(plot: Plot, { rings }: LinesDrawing, ink: ChartInk): void {
  const { pen } = plot;
  let free = -Infinity;
  for (const at of [...rings].sort((a, b) => a.x - b.x)) {
    ring(plot, at, { colour: ink.text, width: 2, dash: [] }, ink.paper, 5);
    const text = at.text ?? '';
    if (text === '') continue;
    pen.font = `600 ${fontOf(ink)}`;
    const half = pen.measureText(text).width / 2;
    const x = Math.min(Math.max(plot.x(at.x), plot.left + half), plot.right - half);
    if (x - half < free) continue;
    free = x + half + 6;
    const y = Math.max(plot.y(at.y) - 15, plot.top + 8);
    written(pen, text, { x, y, align: 'center', colour: ink.text, ground: ink.paper });
  }
}

/**
 * The drawing of several lines.
 * @param labelRoom width of the widest label
 */
export function linesPicture(
  drawing: LinesDrawing,
  ink: ChartInk,
  room: { readonly width: number; readonly height: number },
  labelRoom: number,
  format: Format,
): LinesPicture {
  const { min, max, title, tickAfter } = drawing.across;
  return {
    ...room,
    ink,
    padding: { left: 0, right: gap + labelRoom + 2, top, bottom: 0 },
    x: { min, max, title, tick: (value, step) => format.tick(value, step) + tickAfter },
    y: { ...drawing.heights, title: '', tick: format.tick },
    lines: linesOf(drawing, ink),
    under: (plot) => {
      for (const height of drawing.levels) level(plot, height, { colour: ink.quiet, width: 1, dash: [2, 3] });
      today(plot, drawing, ink);
    },
    over: (plot) => {
      ringed(plot, drawing, ink);
      endLabels(plot, drawing, ink);
    },
  };
}
