import { wording } from '../../../language/wording';
import { fontOf, type ChartInk } from '../../picture/ink';
import { bar, upright } from '../../picture/marks';
import type { Plot } from '../../picture/plot';
import type { RowsPicture } from '../../picture/rowsPicture';
import type { Format } from '../../text/numberFormat';
import type { ShownBar } from './bars';
import { gap, heightOf, heights, type LaidBars, type MeasuredText } from './barTexts';

/** What the chart shows. */
export interface Tornado {
  readonly bars: readonly ShownBar[];
  readonly laid: LaidBars;
  /** The result today, as a number and as a text. */
  readonly today: number;
  readonly todayText: string;
  /** The letter of the plan whose result is shown; undefined for a difference. */
  readonly letter: 'A' | 'B' | undefined;
}

const thickness = 14;
/** Margin around a text, in pixels. */
const rim = 2;
/** Pixels from the middle of a bar down to the texts below it. */
const belowBar = 19;

/** The colour of the bars: that of their plan. */
export function colourOf(letter: Tornado['letter'], ink: ChartInk): string {
  if (letter === undefined) return ink.quiet;
  return letter === 'A' ? ink.planA : ink.planB;
}

/** The shorter side of each bar is drawn last, so that both are seen where they point the same way. */
function bars(plot: Plot, { bars: all, today, letter }: Tornado, ink: ChartInk): void {
  const colour = colourOf(letter, ink);
  const striped = ink.hatched(colour);
  all.forEach(({ atLow, atHigh }, row) => {
    const low = { end: atLow.toNumber(), fill: colour };
    const high = { end: atHigh.toNumber(), fill: striped };
    const lowIsShort = Math.abs(low.end - today) < Math.abs(high.end - today);
    for (const { end, fill } of lowIsShort ? [high, low] : [low, high]) {
      bar(plot, today, end, plot.y(row), { fill, edge: colour, thickness });
    }
  });
}

/** Writes a text on the paper's colour, so that no line crosses it. */
function sideText({ pen }: Plot, text: MeasuredText, x: number, y: number, ink: ChartInk): void {
  const { strong, quiet, lead, width } = text;
  pen.fillStyle = ink.paper;
  pen.fillRect(x - rim, y - ink.size * 0.6, width + 2 * rim, ink.size * 1.2);
  pen.fillStyle = ink.text;
  pen.fillText(strong, x, y);
  pen.fillStyle = ink.quiet;
  pen.fillText(quiet, x + lead, y);
}

function texts(plot: Plot, { texts: all, layout }: LaidBars, ink: ChartInk): void {
  all.forEach(({ left, right }, row) => {
    const y = plot.y(row);
    if (layout.below) {
      sideText(plot, left, 0, y + belowBar, ink);
      sideText(plot, right, plot.width - right.width, y + belowBar, ink);
    } else {
      sideText(plot, left, plot.x(left.at) - gap - left.width, y, ink);
      sideText(plot, right, plot.x(right.at) + gap, y, ink);
    }
  });
}

/** Writes a text above a vertical line, kept within the chart; returns half its width. */
function heading({ pen, x, width }: Plot, text: string, value: number, ink: ChartInk, colour: string): number {
  const half = ink.measure(text) / 2;
  pen.fillStyle = colour;
  pen.fillText(text, Math.min(Math.max(x(value), half), width - half) - half, 8);
  return half;
}

function today(plot: Plot, { today: value, todayText, laid }: Tornado, ink: ChartInk): void {
  upright(plot, value, { colour: ink.text, width: 1.5, dash: [] }, 4);
  const half = heading(plot, wording`today ${todayText}`, value, ink, ink.text);
  if (laid.layout.min < 0 && laid.layout.max > 0) {
    upright(plot, 0, { colour: ink.fault, width: 1.5, dash: [5, 4] }, 4);
    const near = Math.abs(plot.x(0) - plot.x(value)) < half + 10;
    if (!near) heading(plot, '0', 0, ink, ink.fault);
  }
}

/** The drawing of a tornado. */
export function tornadoPicture(tornado: Tornado, ink: ChartInk, width: number, format: Format): RowsPicture {
  const { laid } = tornado;
  const { min, max, before, after } = laid.layout;
  return {
    width,
    height: heightOf(tornado.bars.length, laid),
    ink,
    padding: { left: before, right: after, top: heights.top, bottom: 0 },
    x: { min, max, title: '', tick: format.tick },
    rows: tornado.bars.length,
    foot: heights.axis,
    under: (plot) => bars(plot, tornado, ink),
    over: (plot) => {
      plot.pen.font = fontOf(ink);
      plot.pen.textAlign = 'left';
      plot.pen.textBaseline = 'middle';
      today(plot, tornado, ink);
      texts(plot, laid, ink);
    },
  };
}
