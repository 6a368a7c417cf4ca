import type { Ink } from './plot';
import { fontOf } from './ink';

let pen: CanvasRenderingContext2D | null | undefined;

/** Widths measured before, by text; those of an ink go with it, as a font may have come in since. */
const known = new WeakMap<Ink, Map<string, number>>();
/** Widths that are kept. */
const most = 2000;

function widthsIn(ink: Ink): Map<string, number> {
  const widths = known.get(ink) ?? new Map<string, number>();
  if (widths.size >= most) widths.clear();
  known.set(ink, widths);
  return widths;
}

/**
 * How wide texts are that a chart writes, in pixels; 0 where there is nothing to measure with. Where all digits are of
 * one width, as they are in the page's own font, texts that differ in digits alone are measured once.
 */
export function measureIn(ink: Ink): (text: string) => number {
  pen ??= document.createElement('canvas').getContext('2d');
  const measurer = pen;
  if (measurer === null) return () => 0;
  const measure = (text: string): number => {
    measurer.font = fontOf(ink);
    return measurer.measureText(text).width;
  };
  const widths = widthsIn(ink);
  const once = (text: string): number => {
    const width = widths.get(text) ?? measure(text);
    widths.set(text, width);
    return width;
  };
  if (new Set(['0', '1', '4', '8'].map(once)).size > 1) return measure;
  return (text) => once(text.replace(/[1-9]/g, '0'));
}
