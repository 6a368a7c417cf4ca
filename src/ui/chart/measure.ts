import { fontOf } from './ink';
import type { Ink } from './plot';

/** How wide a text is, in pixels. */
type Measure = (text: string) => number;

let pen: CanvasRenderingContext2D | null | undefined;

/** What an ink measured goes with it, as a font may have come in since. */
const measures = new WeakMap<Ink, Measure>();
/** Widths that are kept of one ink. */
const most = 2000;

function createMeasure(ink: Ink): Measure {
  pen ??= document.createElement('canvas').getContext('2d');
  const measurer = pen;
  if (measurer === null) return () => 0;
  const measure = (text: string): number => {
    measurer.font = fontOf(ink);
    return measurer.measureText(text).width;
  };
  if (new Set(['0', '1', '4', '8'].map(measure)).size > 1) return measure;
  const widths = new Map<string, number>();
  return (text) => {
    const alike = text.replace(/[1-9]/g, '0');
    if (widths.size >= most) widths.clear();
    const width = widths.get(alike) ?? measure(alike);
    widths.set(alike, width);
    return width;
  };
}

/**
 * How wide texts are that a chart writes, in pixels; 0 where there is nothing to measure with. Where all digits are of
 * one width, as they are in the page's own font, texts that differ in digits alone are measured once.
 */
export function measureIn(ink: Ink): Measure {
  const measure = measures.get(ink) ?? createMeasure(ink);
  measures.set(ink, measure);
  return measure;
}
