import type { ChartInk } from '../../../present/picture/ink';
import { sheetOf } from '../../../present/picture/sheet';
import { createSvgPaper } from '../../../present/picture/svgPaper';
import type { TakenPicture } from '../../../present/picture/takenPicture';
import { imageCanvas } from '../charts/imageCanvas';
import { inkOf } from '../charts/ink';
import { onLightGround } from '../charts/lightGround';
import { createMeasure } from '../charts/measure';
import { canvasPaper } from './canvasPaper';

/** Of the sheet, in pixels; a PNG has twice as many. */
const sheetWidth = 760;
const perPixel = 2;

function lightInk(): ChartInk {
  return onLightGround((element) => inkOf(element, false));
}

/** A chart as an SVG file. */
export function svgFile(taken: TakenPicture, source: string): string {
  const measures = new Map<string, (text: string) => number>();
  const paper = createSvgPaper({
    measure: (text, font) => {
      const measure = measures.get(font) ?? createMeasure(font);
      measures.set(font, measure);
      return measure(text);
    },
    imageAddress: (pixels, width, height) => imageCanvas(pixels, width, height)?.toDataURL('image/png') ?? '',
  });
  const light = lightInk();
  const ink = { ...light, hatched: (colour: string) => paper.hatched(colour, light.paper) };
  const sheet = sheetOf(taken, source, ink, sheetWidth);
  sheet.draw(paper);
  return paper.file(sheet.width, sheet.height, taken.title, taken.sentence);
}

/** A chart as a PNG; undefined where the browser cannot make one. */
export async function pngFile(taken: TakenPicture, source: string): Promise<Blob | undefined> {
  const sheet = sheetOf(taken, source, lightInk(), sheetWidth);
  const canvas = document.createElement('canvas');
  canvas.width = sheet.width * perPixel;
  canvas.height = sheet.height * perPixel;
  const pen = canvas.getContext('2d');
  if (pen === null) return undefined;
  pen.scale(perPixel, perPixel);
  sheet.draw(canvasPaper(pen));
  return new Promise((resolve) => canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/png'));
}
