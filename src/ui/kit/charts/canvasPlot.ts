import type { Plot } from '../../../present/picture/plot';

/** The parts of a plot that come from the canvas: pen, scale and images. */
export function canvasTools(
  pen: CanvasRenderingContext2D,
  { left, top, right, bottom }: Pick<Plot, 'left' | 'top' | 'right' | 'bottom'>,
): Pick<Plot, 'pen' | 'scale' | 'image'> {
  return {
    pen,
    scale: Math.min(2, Math.max(1, devicePixelRatio)),
    image: (pixels, width, height) => {
      const canvas = document.createElement('canvas');
      canvas.width = width;
      canvas.height = height;
      const own = canvas.getContext('2d');
      if (own === null) return;
      const image = own.createImageData(width, height);
      new Uint32Array(image.data.buffer).set(pixels);
      own.putImageData(image, 0, 0);
      pen.drawImage(canvas, left, top, right - left, bottom - top);
    },
  };
}
