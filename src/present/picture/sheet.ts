import { apart } from './apart';
import { fontOf, type ChartInk } from './ink';
import { drawLines } from './linesFrame';
import type { Paper } from './paper';
import type { Pen } from './pen';
import { drawRows, rowsPlot } from './rowsFrame';
import type { DrawnPicture, KeyItem, TakenPicture } from './takenPicture';
import { wrapped } from './wrapped';

const margin = 20;
/** Sizes of type in pixels, and how much wider than the chart's type that of the title runs, as it is bold. */
const sizes = { title: 17, sentence: 14, source: 12 };
const boldly = 1.12;
const lineHeight = 1.35;
/** Between the title, the sentence, the key, the picture and the source line. */
const between = 10;
const keyGap = 18;

interface Block {
  readonly height: number;
  readonly draw: (pen: Pen, top: number) => void;
}

/** A picture with its title, its sentence, its key and where it comes from, on paper of its own. */
export interface PictureSheet {
  readonly width: number;
  readonly height: number;
  readonly draw: (paper: Paper) => void;
}

function textBlock(
  text: string,
  look: { size: number; bold: boolean; colour: string },
  ink: ChartInk,
  width: number,
): Block {
  const wider = (look.size / ink.size) * (look.bold ? boldly : 1);
  const lines = wrapped(text, width, (line) => ink.measure(line) * wider);
  const step = look.size * lineHeight;
  return {
    height: lines.length * step,
    draw: (pen, top) => {
      pen.font = `${look.bold ? '600 ' : ''}${fontOf({ ...ink, size: look.size })}`;
      pen.fillStyle = look.colour;
      pen.textAlign = 'left';
      pen.textBaseline = 'middle';
      lines.forEach((line, k) => pen.fillText(apart(line), margin, top + (k + 0.5) * step));
    },
  };
}

interface PlacedKey extends KeyItem {
  readonly x: number;
  readonly line: number;
}

/** The items of a key beside one another, an item too long for a line in lines of its own. */
function placedKey(items: readonly KeyItem[], ink: ChartInk, width: number): { items: PlacedKey[]; lines: number } {
  const placed: PlacedKey[] = [];
  let [x, line] = [0, 0];
  for (const item of items) {
    const sign = item.room === 0 ? 0 : item.room + 6;
    const found = wrapped(item.text, width - sign, ink.measure);
    // A sign may stand without words.
    const texts = found.length === 0 ? [''] : found;
    const long = sign + Math.max(0, ...texts.map(ink.measure));
    if (x > 0 && x + long > width) [x, line] = [0, line + 1];
    texts.forEach((text, k) =>
      placed.push(k === 0 ? { ...item, text, x, line } : { text, room: item.room, x, line: line + k }),
    );
    line += Math.max(0, texts.length - 1);
    x += long + keyGap;
  }
  return { items: placed, lines: placed.length === 0 ? 0 : line + 1 };
}

function keyBlock(items: readonly KeyItem[], ink: ChartInk, width: number): Block {
  const placed = placedKey(items, ink, width);
  const step = ink.size * 1.6;
  return {
    height: placed.lines * step,
    draw: (pen, top) => {
      for (const { text, room, sign, x, line } of placed.items) {
        const middle = top + (line + 0.5) * step;
        sign?.(pen, margin + x, middle);
        pen.font = fontOf(ink);
        pen.fillStyle = ink.text;
        pen.textAlign = 'left';
        pen.textBaseline = 'middle';
        pen.fillText(apart(text), margin + x + (room === 0 ? 0 : room + 6), middle);
      }
    },
  };
}

function drawPicture(paper: Paper, picture: DrawnPicture): void {
  if ('paint' in picture) picture.paint(paper.pen);
  else if ('lines' in picture) drawLines(paper, picture);
  else {
    const all = { left: 0, top: 0, right: picture.width, bottom: picture.height };
    const image = (pixels: Uint32Array, width: number, height: number): void => paper.image(pixels, width, height, all);
    drawRows(rowsPlot(picture, { pen: paper.pen, scale: 2, image }), picture);
  }
}

/**
 * Lays a picture out on a sheet.
 * @param source the line that says where it comes from
 * @param width of the sheet in pixels
 */
export function sheetOf(taken: TakenPicture, source: string, ink: ChartInk, width: number): PictureSheet {
  const room = width - 2 * margin;
  const picture = taken.draw(ink, room);
  const said = { size: sizes.sentence, bold: false, colour: ink.text };
  const above = [
    textBlock(taken.title, { size: sizes.title, bold: true, colour: ink.text }, ink, room),
    textBlock(taken.sentence, said, ink, room),
    keyBlock(taken.key(ink), ink, room),
  ].filter(({ height }) => height > 0);
  const below = textBlock(source, { size: sizes.source, bold: false, colour: ink.quiet }, ink, room);
  const pictureTop = above.reduce((sum, { height }) => sum + height + between, margin);
  const height = Math.ceil(pictureTop + picture.height + between + below.height + margin);
  return {
    width,
    height,
    draw: (paper) => {
      const { pen } = paper;
      pen.fillStyle = ink.paper;
      pen.fillRect(0, 0, width, height);
      let top = margin;
      for (const block of above) {
        block.draw(pen, top);
        top += block.height + between;
      }
      paper.moved(margin, pictureTop, () => drawPicture(paper, picture));
      below.draw(pen, pictureTop + picture.height + between);
    },
  };
}
