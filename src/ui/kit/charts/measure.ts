/** Widths that are kept of one font. */
const most = 2000;

let pen: CanvasRenderingContext2D | null | undefined;

/**
 * How wide texts are in a CSS font, in pixels; 0 where there is nothing to measure with. Where all digits are of one
 * width, as they are in the page's own font, texts that differ in digits alone are measured once. A font may come in
 * later: make a new measure then.
 */
export function createMeasure(font: string): (text: string) => number {
  pen ??= document.createElement('canvas').getContext('2d');
  const measurer = pen;
  if (measurer === null) return () => 0;
  const measure = (text: string): number => {
    measurer.font = font;
    return measurer.measureText(text).width;
  };
  let digitsAreEqual: boolean | undefined;
  const widths = new Map<string, number>();
  return (text) => {
    digitsAreEqual ??= new Set(['0', '1', '4', '8'].map(measure)).size === 1;
    if (!digitsAreEqual) return measure(text);
    const alike = text.replace(/[1-9]/g, '0');
    if (widths.size >= most) widths.clear();
    const width = widths.get(alike) ?? measure(alike);
    widths.set(alike, width);
    return width;
  };
}
