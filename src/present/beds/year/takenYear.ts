import type { Calendar } from '../../../trade/calendar';
import { fontOf, type ChartInk } from '../../picture/ink';
import { keyBox, keyLine, keyText } from '../../picture/keySigns';
import type { Fill, Pen } from '../../picture/pen';
import type { KeyItem, TakenPicture, WholePicture } from '../../picture/takenPicture';
import type { Dates } from '../../text/dates';
import type { Format } from '../../text/numberFormat';
import { whole } from '../../text/quantities';
import type { CropNames } from '../stageNames';
import { namedMonths, yearBands, yearRoom, type Room, type YearBands } from './bands';
import { yearTexts } from './texts';

/** What the picture of a year that is taken out is made from. */
export interface YearTaken {
  readonly year: Calendar;
  readonly boards: number;
  readonly names: CropNames;
  /** The picture's finding. */
  readonly label: string;
  /** The colour of the bands. */
  readonly leaf: string;
}

const limitDash = [7, 4];

/** How a band is filled: plainly, or hatched so that it is told from its neighbours by more than a tint. */
function fillOf(stage: number, leaf: string, ink: ChartInk): { fill: Fill; share: number } {
  const place = stage % 4;
  if (place === 1) return { fill: ink.hatched(leaf), share: 1 };
  if (place === 3) return { fill: ink.hatched(leaf), share: 0.5 };
  return { fill: leaf, share: place === 0 ? 0.62 : 0.3 };
}

function drawBands(pen: Pen, { bands }: YearBands, room: Room, leaf: string, ink: ChartInk): void {
  for (const { stage, outline, label } of bands) {
    const { fill, share } = fillOf(stage, leaf, ink);
    pen.beginPath();
    outline.forEach(([x, y], k) => (k === 0 ? pen.moveTo(x, y) : pen.lineTo(x, y)));
    pen.closePath();
    pen.fillStyle = fill;
    pen.globalAlpha = share;
    pen.fill();
    pen.globalAlpha = 1;
    if (label === undefined) continue;
    pen.fillStyle = ink.text;
    pen.textAlign = 'left';
    pen.fillText(String(stage + 1), room.width - room.right + 5, label);
  }
}

function line(pen: Pen, from: readonly [number, number], to: readonly [number, number]): void {
  pen.beginPath();
  pen.moveTo(...from);
  pen.lineTo(...to);
  pen.stroke();
}

function drawOver(pen: Pen, { over }: YearBands, ink: ChartInk): void {
  pen.fillStyle = ink.fault;
  pen.textAlign = 'right';
  for (const [from, to] of over) {
    pen.fillRect(from, 4, Math.max(2, to - from), 5);
    pen.fillText('!', from - 2, 7);
  }
}

function drawFrame(pen: Pen, bands: YearBands, room: Room, boards: string, ink: ChartInk, dates: Dates): void {
  const [right, base] = [room.width - room.right, room.height - room.bottom];
  pen.strokeStyle = ink.text;
  pen.lineWidth = 1.5;
  pen.setLineDash([...limitDash]);
  line(pen, [room.left, bands.limit], [right, bands.limit]);
  pen.setLineDash([]);
  pen.strokeStyle = ink.mark;
  pen.lineWidth = 1;
  line(pen, [room.left, base], [right, base]);
  pen.fillStyle = ink.quiet;
  pen.textAlign = 'right';
  pen.fillText(boards, room.left - 6, bands.limit);
  pen.fillText('0', room.left - 6, base);
  pen.fillStyle = ink.text;
  pen.textAlign = 'left';
  for (const { day, x } of namedMonths(bands, room)) {
    line(pen, [x, base], [x, base + 4]);
    pen.fillText(dates.month(day), x + 2, base + 12);
  }
}

function keyOf({ year, boards, names, leaf }: YearTaken, ink: ChartInk): KeyItem[] {
  const { bands, over } = yearBands(year, boards, yearRoom(600));
  return [
    ...bands.map(({ stage }) => {
      const { fill, share } = fillOf(stage, leaf, ink);
      return keyBox(yearTexts.band(names, stage), fill, leaf, share);
    }),
    keyLine(yearTexts.limit(names), ink.text, 1.5, limitDash),
    ...(over.length > 0 ? [keyText(`! ${yearTexts.overFull}`)] : []),
  ];
}

/** A year from an empty bed as a picture that is taken out. */
export function takenYear(taken: YearTaken, format: Format, dates: Dates): TakenPicture {
  const { year, boards, label, leaf } = taken;
  const draw = (ink: ChartInk, width: number): WholePicture => {
    const room = yearRoom(width);
    const bands = yearBands(year, boards, room);
    const paint = (pen: Pen): void => {
      pen.font = fontOf(ink);
      pen.textBaseline = 'middle';
      drawBands(pen, bands, room, leaf, ink);
      drawOver(pen, bands, ink);
      drawFrame(pen, bands, room, whole(boards, format), ink, dates);
    };
    return { width, height: room.height, paint };
  };
  return { title: yearTexts.picture, sentence: label, key: (ink) => keyOf(taken, ink), draw };
}
