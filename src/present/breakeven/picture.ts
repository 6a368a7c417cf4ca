import { fontOf, type ChartInk } from '../picture/ink';
import type { DrawnLine, LinesPicture } from '../picture/linesPicture';
import { level, ring, upright, written } from '../picture/marks';
import type { Plot } from '../picture/plot';
import { wording } from '../../language/wording';
import type { Format } from '../text/numberFormat';
import type { LineName } from '../results/resultLines';
import type { ByLine } from './curve/quickStudy';
import type { Point, InputInterval } from './curve/sample';
import { commonTexts } from '../text/commonTexts';

/** A marked crossing, with the text beside it. */
export interface CrossingMark {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** The line that crosses its target; `difference` in a view of both plans is the place where they meet. */
  readonly line: LineName;
  /** Whether the answer is about this crossing. */
  readonly leading: boolean;
}

/** What the chart shows. */
export interface BreakevenDrawing {
  readonly points: ByLine<readonly Point[]>;
  readonly shown: readonly LineName[];
  readonly visible: InputInterval;
  readonly heights: { readonly min: number; readonly max: number };
  readonly target: number;
  readonly today: { readonly x: number; readonly text: string };
  /** The input's own range. */
  readonly range: InputInterval | undefined;
  readonly crossings: readonly CrossingMark[];
  readonly breaks: readonly number[];
  readonly xTitle: string;
}

const top = 26;
/** Pixels between a label and the one below it. */
const lineHeight = 16;
const letters: Readonly<Record<LineName, string>> = {
  against: 'A',
  plan: 'B',
  difference: commonTexts.secondLessFirst,
};
/** What tells the lines apart beside their colours. */
export const dashes: Readonly<Record<LineName, readonly number[]>> = { against: [], plan: [8, 5], difference: [] };

function colourOf(line: LineName, shown: readonly LineName[], ink: ChartInk): string {
  if (line === 'difference' || shown.length === 1) return ink.text;
  return line === 'against' ? ink.planA : ink.planB;
}

function linesOf({ points, shown, visible }: BreakevenDrawing, ink: ChartInk): DrawnLine[] {
  return shown.map((name) => {
    const all = points[name] ?? [];
    // One point beyond either edge, so that the line reaches the edge.
    const first = Math.max(0, all.findIndex(({ x }) => x >= visible.from) - 1);
    const last = all.findLastIndex(({ x }) => x <= visible.to) + 2;
    return {
      points: all.slice(first, last),
      colour: colourOf(name, shown, ink),
      width: 2.25,
      dash: shown.length === 1 ? [] : dashes[name],
    };
  });
}

/** Writes the letters at the right ends of the lines, spaced so that they do not overlap. */
function endLetters(plot: Plot, { points, shown, visible }: BreakevenDrawing, ink: ChartInk): void {
  if (shown.length < 2) return;
  plot.pen.font = `600 ${fontOf(ink)}`;
  const ends = shown.map((name) => {
    const end = (points[name] ?? []).findLast(({ x, y }) => x <= visible.to && !Number.isNaN(y));
    const y = end === undefined ? plot.top : Math.min(Math.max(plot.y(end.y), plot.top), plot.bottom);
    return { name, y };
  });
  const apart = ink.size + 3;
  ends.sort((a, b) => a.y - b.y);
  ends.forEach((end, i) => {
    const before = ends[i - 1];
    if (before !== undefined) end.y = Math.max(end.y, before.y + apart);
    const colour = colourOf(end.name, shown, ink);
    written(plot.pen, letters[end.name], { x: plot.right + 8, y: end.y, align: 'left', colour, ground: ink.paper });
  });
}

function inPlot(plot: Plot, x: number): boolean {
  const at = plot.x(x);
  return at >= plot.left - 1 && at <= plot.right + 1;
}

function today(plot: Plot, { today: { x, text } }: BreakevenDrawing, ink: ChartInk): void {
  if (!inPlot(plot, x)) return;
  upright(plot, x, { colour: ink.text, width: 1.25, dash: [] }, 4);
  plot.pen.font = fontOf(ink);
  const half = plot.pen.measureText(text).width / 2;
  const at = Math.min(Math.max(plot.x(x), plot.left + half - 20), plot.width - half);
  written(plot.pen, text, { x: at, y: top - 14, align: 'center', colour: ink.text, ground: ink.paper });
}

/** Draws the input's own range as a thin line on the axis with a stroke at either end. */
function ownRange(plot: Plot, { range }: BreakevenDrawing, ink: ChartInk): void {
  if (range === undefined) return;
  const [from, to] = [range.from, range.to].map((x) => Math.min(Math.max(plot.x(x), plot.left), plot.right));
  const { pen, bottom } = plot;
  pen.fillStyle = ink.text;
  pen.fillRect(from!, bottom - 2, to! - from!, 3);
  for (const x of [range.from, range.to]) if (inPlot(plot, x)) pen.fillRect(plot.x(x) - 1, bottom - 7, 2, 8);
}

/** Reserves the room of a label; false where it would overlap an earlier label. */
function takesRoom(taken: { from: number; to: number; y: number }[], from: number, to: number, y: number): boolean {
  const isFree = taken.every((label) => to < label.from || from > label.to || Math.abs(y - label.y) > lineHeight);
  if (isFree) taken.push({ from, to, y });
  return isFree;
}

function crossings(plot: Plot, drawing: BreakevenDrawing, ink: ChartInk): void {
  plot.pen.font = `600 ${fontOf(ink)}`;
  const taken: { from: number; to: number; y: number }[] = [];
  const leadingFirst = [...drawing.crossings].sort((a, b) => Number(b.leading) - Number(a.leading));
  for (const { x, y, text, line, leading } of leadingFirst) {
    if (!inPlot(plot, x)) continue;
    const colour = leading ? ink.text : colourOf(line, drawing.shown, ink);
    ring(plot, { x, y }, { colour, width: leading ? 2.5 : 2, dash: [] }, ink.paper, leading ? 6 : 4);
    if (text === '') continue;
    const { width } = plot.pen.measureText(text);
    const onRight = plot.x(x) + width + 14 < plot.right;
    const at = plot.x(x) + (onRight ? 11 : -11);
    if (!takesRoom(taken, onRight ? at : at - width, onRight ? at + width : at, plot.y(y))) continue;
    written(plot.pen, text, { x: at, y: plot.y(y) - 13, align: onRight ? 'left' : 'right', colour, ground: ink.paper });
  }
}

function breaks(plot: Plot, drawing: BreakevenDrawing, ink: ChartInk): void {
  plot.pen.font = fontOf(ink);
  for (const x of drawing.breaks) {
    if (!inPlot(plot, x)) continue;
    upright(plot, x, { colour: ink.fault, width: 1.5, dash: [2, 3] });
    written(plot.pen, wording`break`, {
      x: plot.x(x),
      y: plot.bottom - 14,
      align: 'center',
      colour: ink.fault,
      ground: ink.paper,
    });
  }
}

/** The drawing of a breakeven. */
export function breakevenPicture(
  drawing: BreakevenDrawing,
  ink: ChartInk,
  room: { readonly width: number; readonly height: number },
  format: Format,
): LinesPicture {
  return {
    ...room,
    ink,
    padding: { left: 0, right: drawing.shown.length > 1 ? 24 : 10, top, bottom: 0 },
    x: { min: drawing.visible.from, max: drawing.visible.to, title: drawing.xTitle, tick: format.tick },
    y: { ...drawing.heights, title: '', tick: format.tick },
    lines: linesOf(drawing, ink),
    under: (plot) => {
      level(plot, drawing.target, { colour: ink.mark, width: 1.5, dash: [2, 3] });
      today(plot, drawing, ink);
      ownRange(plot, drawing, ink);
    },
    over: (plot) => {
      breaks(plot, drawing, ink);
      crossings(plot, drawing, ink);
      endLetters(plot, drawing, ink);
    },
  };
}
