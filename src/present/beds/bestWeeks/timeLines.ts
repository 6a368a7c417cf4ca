import { fontOf, type ChartInk } from '../../picture/ink';
import type { DrawnLine, LinesPicture } from '../../picture/linesPicture';
import { ring, upright, written } from '../../picture/marks';
import type { Plot } from '../../picture/plot';
import type { Format } from '../../text/numberFormat';
import { commonTexts } from '../../text/commonTexts';
import type { BestWeeksResult } from './search';
import { bestWeeksTexts } from './texts';

/** One line of results over the times, at one density. */
export interface TimeLine {
  /** Its row in the grid. */
  readonly row: number;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** The density, as it is written at the line's end. */
  readonly text: string;
}

/** What the lines over the times show. */
export interface TimeLinesDrawing {
  readonly lines: readonly TimeLine[];
  readonly today: number;
  readonly best: { readonly x: number; readonly y: number } | undefined;
  readonly xTitle: string;
}

/** Styles of the lines, all different; the first is for the best density. */
const strokes: readonly Pick<DrawnLine, 'dash' | 'width'>[] = [
  { dash: [], width: 2.75 },
  { dash: [7, 4], width: 2 },
  { dash: [2, 3], width: 2 },
  { dash: [10, 3, 2, 3], width: 2 },
];

/** The lines at the best density, at today's, and at the lowest and highest, without repeats. */
export function timeLines({ ask, grid, best }: BestWeeksResult, write: (density: number) => string): TimeLine[] {
  const today = ask.densities.findIndex((density) => density.eq(ask.density.base));
  const rows = [best?.j ?? 0, today, 0, ask.densities.length - 1].filter((row) => row >= 0);
  return [...new Set(rows)].map((row) => ({
    row,
    points: (grid.values[row] ?? []).map((y, i) => ({ x: grid.across[i] ?? NaN, y })),
    text: write(grid.down[row] ?? NaN),
  }));
}

function heights(lines: readonly TimeLine[]): { min: number; max: number } {
  const all = lines.flatMap(({ points }) => points.map(({ y }) => y)).filter((y) => !Number.isNaN(y));
  const [low, high] = all.length === 0 ? [0, 1] : [Math.min(...all), Math.max(...all)];
  const margin = high > low ? (high - low) * 0.08 : Math.abs(high) / 10 || 1;
  return { min: low - margin, max: high + margin };
}

/** Writes the densities at the right ends of their lines, spaced so that they do not overlap. */
function endTexts(plot: Plot, lines: readonly TimeLine[], ink: ChartInk): void {
  plot.pen.font = `600 ${fontOf(ink)}`;
  const ends = lines.flatMap(({ points, text }) => {
    const last = points.findLast(({ y }) => !Number.isNaN(y));
    return last === undefined ? [] : [{ text, y: plot.y(last.y) }];
  });
  ends.sort((a, b) => a.y - b.y);
  ends.forEach((end, i) => {
    end.y = Math.max(end.y, (ends[i - 1]?.y ?? -Infinity) + ink.size + 3);
    written(plot.pen, end.text, { x: plot.right + 6, y: end.y, align: 'left', colour: ink.text, ground: ink.paper });
  });
}

/** The drawing of results over times at a few densities. */
export function timeLinesPicture(
  drawing: TimeLinesDrawing,
  ink: ChartInk,
  room: { readonly width: number; readonly height: number },
  format: Format,
): LinesPicture {
  const xs = drawing.lines[0]?.points.map(({ x }) => x) ?? [];
  const longest = Math.max(2, ...drawing.lines.map(({ text }) => text.length));
  return {
    ...room,
    ink,
    padding: { left: 0, right: 10 + longest * ink.size * 0.6, top: 22, bottom: 0 },
    x: { min: xs[0] ?? 0, max: xs.at(-1) ?? 1, title: drawing.xTitle, tick: format.tick },
    y: { ...heights(drawing.lines), title: '', tick: format.tick },
    lines: drawing.lines.map(({ points }, k) => ({ points, colour: ink.text, ...strokes[k % strokes.length]! })),
    under: (plot) => {
      upright(plot, drawing.today, { colour: ink.text, width: 1, dash: [4, 3] }, 4);
      plot.pen.font = fontOf(ink);
      written(plot.pen, commonTexts.today, {
        x: plot.x(drawing.today),
        y: plot.top - 12,
        align: 'center',
        colour: ink.text,
        ground: ink.paper,
      });
    },
    over: (plot) => {
      endTexts(plot, drawing.lines, ink);
      if (drawing.best === undefined) return;
      ring(plot, drawing.best, { colour: ink.text, width: 2.5, dash: [] }, ink.paper, 5.5);
      const [x, y] = [plot.x(drawing.best.x), plot.y(drawing.best.y)];
      const onRight = x + 50 < plot.right;
      written(plot.pen, bestWeeksTexts.best, {
        x: x + (onRight ? 10 : -10),
        y: y - 12,
        align: onRight ? 'left' : 'right',
        colour: ink.text,
        ground: ink.paper,
      });
    },
  };
}
