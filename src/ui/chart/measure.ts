let pen: CanvasRenderingContext2D | null | undefined;

/** How wide texts are in a font such as `13px serif`, in pixels; 0 where there is nothing to measure with. */
export function measureIn(font: string): (text: string) => number {
  pen ??= document.createElement('canvas').getContext('2d');
  const measurer = pen;
  return (text) => {
    if (measurer === null) return 0;
    measurer.font = font;
    return measurer.measureText(text).width;
  };
}
