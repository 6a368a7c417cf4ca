import { imageCanvas } from '../charts/imageCanvas';
import type { Paper } from '../../../present/picture/paper';

/** A canvas as paper. */
export function canvasPaper(pen: CanvasRenderingContext2D): Paper {
  const apart = (draw: () => void): void => {
    pen.save();
    draw();
    pen.restore();
  };
  return {
    pen,
    moved: (right, down, draw) =>
      apart(() => {
        pen.translate(right, down);
        draw();
      }),
    within: ({ left, top, right, bottom }, draw) =>
      apart(() => {
        pen.beginPath();
        pen.rect(left, top, right - left, bottom - top);
        pen.clip();
        draw();
      }),
    image: (pixels, width, height, { left, top, right, bottom }) => {
      const canvas = imageCanvas(pixels, width, height);
      if (canvas !== undefined) pen.drawImage(canvas, left, top, right - left, bottom - top);
    },
  };
}
