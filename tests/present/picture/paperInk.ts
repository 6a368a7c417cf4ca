import type { ChartInk } from '../../../src/present/picture/ink';
import { createSvgPaper, type SvgPaper } from '../../../src/present/picture/svgPaper';

/** Paper and ink whose letters are all as wide as a share of their height. */
export function svgPaperAndInk(): { paper: SvgPaper; ink: ChartInk } {
  const sizeOf = (font: string): number => Number(/([\d.]+)px/.exec(font)?.[1]);
  const paper = createSvgPaper({
    measure: (text, font) => Array.from(text).length * sizeOf(font) * 0.5,
    imageAddress: (pixels, width, height) => `data:image/png;base64,${pixels.length}x${width}x${height}`,
  });
  const ink: ChartInk = {
    text: '#222',
    quiet: '#555',
    hair: '#ddd',
    paper: '#fff',
    mark: '#888',
    planA: '#00609c',
    planB: '#b04400',
    fault: '#a3232f',
    family: "'A Type', sans-serif",
    size: 13,
    measure: (text) => Array.from(text).length * 6.5,
    hatched: (colour) => paper.hatched(colour, '#fff'),
  };
  return { paper, ink };
}
