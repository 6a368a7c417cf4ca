import { fontOf, type ChartInk } from '../picture/ink';
import type { DrawnLine, LinesPicture } from '../picture/linesPicture';
import { upright, written } from '../picture/marks';
import type { Fill } from '../picture/pen';
import type { Plot } from '../picture/plot';
import type { Format } from '../text/numberFormat';
import type { Histogram } from '../../study/histogram';
import { shownPercentiles, type DrawSpread, type Summary } from './summary';
import { commonTexts } from '../text/commonTexts';

/** How draws are drawn: as a histogram, or as the cumulative share below each result. */
export type SpreadStyle = 'histogram' | 'curve';

/** What the picture shows. */
export interface SpreadDrawing {
  readonly spread: DrawSpread;
  readonly style: SpreadStyle;
  /** Letters of the sets of draws, the plan asked about first; blank where there is only one plan. */
  readonly letters: readonly ('A' | 'B' | '')[];
  readonly target: number;
  readonly targetText: string;
  /** The result today. */
  readonly today: number;
  readonly xTitle: string;
}

const boxRow = 16;
const top = 26;

function colourOf(letter: 'A' | 'B' | '', ink: ChartInk): string {
  if (letter === '') return ink.mark;
  return letter === 'A' ? ink.planA : ink.planB;
}

function summaries({ main, beside }: DrawSpread): Summary[] {
  return beside === undefined ? [main] : [main, beside];
}

/** A column of the histogram, its foot on the axis. */
function column(plot: Plot, { from, width }: Histogram, bin: number, share: number, fill: Fill): void {
  const [left, right] = [plot.x(from + bin * width), plot.x(from + (bin + 1) * width)];
  const high = plot.y(share * 100);
  plot.pen.fillStyle = fill;
  plot.pen.fillRect(left, high, Math.max(1, right - left - 0.5), plot.bottom - high);
}

/** The outline over a set's columns. */
function outline(plot: Plot, { from, width }: Histogram, shares: readonly number[], colour: string): void {
  const { pen } = plot;
  pen.beginPath();
  pen.moveTo(plot.x(from), plot.bottom);
  shares.forEach((share, bin) => {
    pen.lineTo(plot.x(from + bin * width), plot.y(share * 100));
    pen.lineTo(plot.x(from + (bin + 1) * width), plot.y(share * 100));
  });
  pen.lineTo(plot.x(from + shares.length * width), plot.bottom);
  pen.strokeStyle = colour;
  pen.lineWidth = 1.25;
  pen.stroke();
}

/** In each bin the lower column is drawn last, so that both are seen. B is hatched, all others are solid. */
function columns(plot: Plot, { spread: { histogram }, letters }: SpreadDrawing, ink: ChartInk): void {
  const colours = letters.map((letter) => colourOf(letter, ink));
  const fills = letters.map((letter, k) => (letter === 'B' ? ink.hatched(colours[k]!) : colours[k]!));
  const bins = histogram.shares[0]?.length ?? 0;
  for (let bin = 0; bin < bins; bin += 1) {
    const high = histogram.shares.map((shares, k) => ({ k, share: shares[bin]! })).sort((a, b) => b.share - a.share);
    for (const { k, share } of high) column(plot, histogram, bin, share, fills[k]!);
  }
  histogram.shares.forEach((shares, k) => outline(plot, histogram, shares, colours[k]!));
}

/**
 * Draws the percentiles: a thin line from the 5th to the 95th, a bar from the 25th to the 75th, a stroke at the median.
 */
function box(plot: Plot, { percentiles }: Summary, row: number, letter: string, colour: string, ink: ChartInk): void {
  const at = (share: (typeof shownPercentiles)[number]): number =>
    Math.min(Math.max(plot.x(percentiles[shownPercentiles.indexOf(share)]!), plot.left), plot.right);
  const y = top + boxRow * (row + 0.5);
  const { pen } = plot;
  pen.fillStyle = colour;
  pen.fillRect(at(5), y - 0.5, at(95) - at(5), 1.5);
  pen.fillRect(at(25), y - 3, at(75) - at(25), 6);
  for (const share of [5, 10, 90, 95] as const) pen.fillRect(at(share) - 0.75, y - 4, 1.5, 8);
  pen.fillStyle = ink.text;
  pen.fillRect(at(50) - 1.25, y - 6, 2.5, 12);
  if (letter === '') return;
  pen.font = `600 ${fontOf(ink)}`;
  written(pen, letter, { x: at(95) + 10, y, align: 'center', colour, ground: ink.paper });
}

function heading(plot: Plot, text: string, value: number, y: number, colour: string, ink: ChartInk): void {
  plot.pen.font = fontOf(ink);
  const half = plot.pen.measureText(text).width / 2;
  const x = Math.min(Math.max(plot.x(value), half), plot.width - half);
  written(plot.pen, text, { x, y, align: 'center', colour, ground: ink.paper });
}

function inSight({ left, right, x }: Plot, value: number): boolean {
  return x(value) >= left - 1 && x(value) <= right + 1;
}

function uprights(plot: Plot, { target, targetText, today }: SpreadDrawing, ink: ChartInk): void {
  const both = inSight(plot, target) && inSight(plot, today);
  const crowded = both && Math.abs(plot.x(target) - plot.x(today)) < 70;
  if (inSight(plot, today)) {
    upright(plot, today, { colour: ink.text, width: 1.5, dash: [] }, 4);
    heading(plot, commonTexts.today, today, 7, ink.text, ink);
  }
  if (!inSight(plot, target)) return;
  upright(plot, target, { colour: ink.fault, width: 1.5, dash: [5, 4] }, 4);
  if (!crowded) heading(plot, targetText, target, 7, ink.fault, ink);
}

function curves({ spread, letters }: SpreadDrawing, ink: ChartInk): DrawnLine[] {
  return summaries(spread).map(({ curve }, k) => ({
    points: curve.map((x, i) => ({ x, y: (100 * i) / (curve.length - 1) })),
    colour: colourOf(letters[k] ?? '', ink),
    width: 2.25,
    dash: letters[k] === 'B' ? [7, 4] : [],
  }));
}

function tallest({ shares }: Histogram): number {
  return 100 * Math.max(...shares.flat(), 1e-9);
}

/** The drawing of a spread. */
export function spreadPicture(
  drawing: SpreadDrawing,
  ink: ChartInk,
  room: { readonly width: number; readonly height: number },
  format: Format,
): LinesPicture {
  const { spread, style, letters } = drawing;
  const { histogram } = spread;
  const sets = summaries(spread);
  const bins = histogram.shares[0]?.length ?? 1;
  const isCurve = style === 'curve';
  return {
    ...room,
    ink,
    padding: { left: 0, right: 12, top: top + boxRow * sets.length + 4, bottom: 0 },
    x: {
      min: histogram.from,
      max: histogram.from + bins * histogram.width,
      title: drawing.xTitle,
      tick: format.tick,
    },
    y: {
      min: 0,
      max: isCurve ? 100 : tallest(histogram) * 1.04,
      title: '',
      tick: (value, step) => `${format.tick(value, step)} %`,
    },
    lines: isCurve ? curves(drawing, ink) : [],
    under: (plot) => {
      if (!isCurve) columns(plot, drawing, ink);
    },
    over: (plot) => {
      sets.forEach((summary, row) =>
        box(plot, summary, row, letters[row] ?? '', colourOf(letters[row] ?? '', ink), ink),
      );
      uprights(plot, drawing, ink);
    },
  };
}
