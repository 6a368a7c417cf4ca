/** At most this many widths are kept for a font. */
const most = 2000;

let pen: CanvasRenderingContext2D | null | undefined;

/**
 * Measures the width of texts in a CSS font, in pixels; 0 where nothing can measure it. In a font whose digits are all
 * equally wide, as in the page's own, texts that differ only in digits are measured once. A font may finish loading
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
