import type { Plot } from '../../../present/picture/plot';
import { imageCanvas } from './imageCanvas';

/** The parts of a plot that come from the canvas: pen, scale and images. */
export function canvasTools(
  pen: CanvasRenderingContext2D,
  { left, top, right, bottom }: Pick<Plot, 'left' | 'top' | 'right' | 'bottom'>,
): Pick<Plot, 'pen' | 'scale' | 'image'> {
  return {
    pen,
    scale: Math.min(2, Math.max(1, devicePixelRatio)),
    image: (pixels, width, height) => {
      const canvas = imageCanvas(pixels, width, height);
      if (canvas === undefined) return;
      pen.drawImage(canvas, left, top, right - left, bottom - top);
    },
  };
}
