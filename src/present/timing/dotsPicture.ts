import { wording, wordingOf } from '../../language/wording';
import { fontOf, type ChartInk } from '../picture/ink';
import { cut } from '../picture/labelledLines';
import { upright, written } from '../picture/marks';
import type { Pen } from '../picture/pen';
import type { Plot } from '../picture/plot';
import type { RowsPicture } from '../picture/rowsPicture';
import type { Format } from '../text/numberFormat';
import { reachOf, type DotRow } from './dots';

/** The picture of the steps. */
export interface DotsDrawing {
  readonly rows: readonly DotRow[];
  /** The two texts above each row: the step's name, and its time with the interval. */
  readonly texts: readonly (readonly [name: string, time: string])[];
  /** Index of the chosen step's row; −1 for none. */
  readonly chosen: number;
  /** The precision wanted of the mean, in per cent. */
  readonly within: number;
}

const rowHeight = 64;
/** Pixels from a row's middle down to its dots, as the row's text is above them. */
const down = 8;
const largest = 8.5;
const smallest = 2.5;
const foot = 46;

function dotsHeight(rows: number): number {
  return rows * rowHeight + foot;
}

/** Draws the interval as a band with strokes at its ends, and an arrow where it reaches beyond the picture. */
function band(plot: Plot, half: number, y: number, ink: ChartInk): void {
  const { pen, left, right } = plot;
  const ends = [plot.x(-half), plot.x(half)] as const;
  const [from, to] = [Math.max(ends[0], left), Math.min(ends[1], right)];
  pen.globalAlpha = 0.28;
  pen.fillStyle = ink.mark;
  pen.fillRect(from, y - 10, to - from, 20);
  pen.globalAlpha = 1;
  pen.fillStyle = ink.text;
  for (const [end, side] of [
    [ends[0], -1],
    [ends[1], 1],
  ] as const) {
    if (end >= left && end <= right) pen.fillRect(end - 0.75, y - 10, 1.5, 20);
    else arrow(pen, side < 0 ? left : right, y, side);
  }
}

function arrow(pen: Pen, x: number, y: number, side: -1 | 1): void {
  pen.beginPath();
  pen.moveTo(x, y);
  pen.lineTo(x - side * 7, y - 5);
  pen.lineTo(x - side * 7, y + 5);
  pen.fill();
}

function dots(plot: Plot, row: DotRow, y: number, ink: ChartInk): void {
  const { pen } = plot;
  for (const { off, size } of row.dots) {
    pen.beginPath();
    pen.arc(plot.x(off), y, Math.max(smallest, largest * Math.sqrt(size)), 0, 2 * Math.PI);
    pen.globalAlpha = 0.35;
    pen.fillStyle = ink.planA;
    pen.fill();
    pen.globalAlpha = 1;
    pen.strokeStyle = ink.planA;
    pen.lineWidth = 1.5;
    pen.stroke();
  }
}

/** Draws the mean as a diamond, to tell it from the dots. */
function mean(plot: Plot, y: number, ink: ChartInk): void {
  const { pen } = plot;
  const x = plot.x(0);
  pen.beginPath();
  pen.moveTo(x, y - 6);
  pen.lineTo(x + 4.5, y);
  pen.lineTo(x, y + 6);
  pen.lineTo(x - 4.5, y);
  pen.closePath();
  pen.fillStyle = ink.text;
  pen.fill();
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 1;
  pen.stroke();
}

function heading(plot: Plot, [name, time]: readonly [string, string], bold: boolean, y: number, ink: ChartInk): void {
  const { pen, left, right } = plot;
  pen.font = fontOf(ink);
  const room = right - left - pen.measureText(time).width - 12;
  written(pen, time, { x: right, y, align: 'right', colour: ink.text, ground: ink.paper });
  pen.font = bold ? `600 ${fontOf(ink)}` : fontOf(ink);
  const label = cut(name, room, (text) => pen.measureText(text).width);
  written(pen, label, { x: left, y, align: 'left', colour: ink.text, ground: ink.paper });
}

/** Draws the precision wanted as two dashed lines, and the mean as a line through all rows. */
function goal(plot: Plot, { within }: DotsDrawing, ink: ChartInk): void {
  for (const side of [-within, within]) upright(plot, side, { colour: ink.quiet, width: 1, dash: [3, 3] });
  upright(plot, 0, { colour: ink.hair, width: 1, dash: [] });
}

/** The picture of each step's batches around its mean. */
export function dotsPicture(drawing: DotsDrawing, ink: ChartInk, width: number, format: Format): RowsPicture {
  const reach = reachOf(drawing.rows, drawing.within);
  return {
    width,
    height: dotsHeight(drawing.rows.length),
    ink,
    padding: { left: 2, right: 2, top: 0, bottom: 0 },
    x: {
      min: -reach,
      max: reach,
      title: wording`seconds of a batch, against the mean of its step`,
      tick: (value, step) =>
        value === 0 ? wordingOf('on an axis')`mean` : `${value > 0 ? '+' : ''}${format.tick(value, step)} %`,
    },
    rows: drawing.rows.length,
    foot,
    under: (plot) => goal(plot, drawing, ink),
    over: (plot) =>
      drawing.rows.forEach((row, at) => {
        const middle = plot.y(at);
        heading(plot, drawing.texts[at] ?? ['', ''], at === drawing.chosen, middle - 17, ink);
        if (row.half !== undefined && row.half > 0) band(plot, row.half, middle + down, ink);
        dots(plot, row, middle + down, ink);
        mean(plot, middle + down, ink);
      }),
  };
}
