import { fontOf, type ChartInk } from '../picture/ink';
import { keyText } from '../picture/keySigns';
import type { Pen } from '../picture/pen';
import type { KeyItem } from '../picture/takenPicture';
import { commonTexts } from '../text/commonTexts';
import { listedBands, startOf, writtenEdges } from './bands';
import type { HeatDrawing } from './picture';
import { bandColour, colourText, type Shades } from './shades';

/** What the key of a heat picture says. */
export interface HeatKeyTexts {
  /** The input of the vertical axis, with its unit. */
  readonly downTitle: string;
  /** What the hatched side means; blank where there is none. */
  readonly worseText: string;
  /** How far it is from one shade to the next. */
  readonly step: string;
  /** Writes a result without its unit. */
  readonly write: (value: number) => string;
}

const bandWidth = 26;
const bandHeight = 9;

/** Slanted strokes over a box. */
function stripes(pen: Pen, left: number, top: number, width: number, colour: string, bothWays: boolean): void {
  pen.strokeStyle = colour;
  pen.lineWidth = 1;
  pen.beginPath();
  for (let x = left; x + bandHeight <= left + width; x += 6) {
    pen.moveTo(x, top + bandHeight);
    pen.lineTo(x + bandHeight, top);
    if (!bothWays) continue;
    pen.moveTo(x, top);
    pen.lineTo(x + bandHeight, top + bandHeight);
  }
  pen.stroke();
}

/** The shades in a row, with the results at the labelled edges below them. */
function scale(drawing: HeatDrawing, write: HeatKeyTexts['write'], shades: Shades, ink: ChartInk): KeyItem {
  const { bands, worse } = drawing;
  const all = listedBands(bands);
  const edges = writtenEdges(bands).map((edge) => ({ along: (edge - bands.first) * bandWidth, edge }));
  const texts = edges.map(({ along, edge }) => ({ along, text: write(startOf(bands, edge)) }));
  // A label may be wider than what lies beside its edge.
  const before = Math.max(0, ...texts.map(({ along, text }) => ink.measure(text) / 2 - along));
  const long = all.length * bandWidth;
  const after = Math.max(0, ...texts.map(({ along, text }) => along + ink.measure(text) / 2 - long));
  return {
    text: '',
    room: before + long + after,
    sign: (pen, left, middle) => {
      const top = middle - bandHeight;
      all.forEach((band, k) => {
        const x = left + before + k * bandWidth;
        pen.fillStyle = colourText(bandColour(bands, band, worse, shades));
        pen.fillRect(x, top, bandWidth, bandHeight);
        if (band < 0 === (worse === 'below')) stripes(pen, x, top, bandWidth, colourText(shades.hatch), false);
      });
      pen.font = fontOf({ ...ink, size: ink.size - 2 });
      pen.fillStyle = ink.quiet;
      pen.textAlign = 'center';
      pen.textBaseline = 'top';
      for (const { along, text } of texts) pen.fillText(text, left + before + along, middle + 1);
    },
  };
}

function box(text: string, shades: Shades, bothWays: boolean): KeyItem {
  return {
    text,
    room: bandWidth,
    sign: (pen, left, middle) => {
      pen.fillStyle = colourText(shades.paper);
      pen.fillRect(left, middle - bandHeight / 2, bandWidth, bandHeight);
      stripes(pen, left, middle - bandHeight / 2, bandWidth, colourText(shades.hatch), bothWays);
    },
  };
}

/** The key of a heat picture that is taken out. */
export function heatKey(
  drawing: HeatDrawing,
  { downTitle, worseText, step, write }: HeatKeyTexts,
  hasUnknown: boolean,
  shades: Shades,
  ink: ChartInk,
): KeyItem[] {
  return [
    scale(drawing, write, shades, ink),
    keyText(step),
    ...(worseText === '' ? [] : [box(worseText, shades, false)]),
    ...(hasUnknown ? [box(commonTexts.cannotCompute, shades, true)] : []),
    keyText(`\u2191 ${downTitle}`),
  ];
}
