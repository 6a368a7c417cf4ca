import type { Drawing } from '../../../present/picture/plot';
import { drawRows, rowsPlot } from '../../../present/picture/rowsFrame';
import type { RowsPicture } from '../../../present/picture/rowsPicture';
import { canvasTools } from './canvasPlot';

/** Sets the size of a canvas in CSS pixels, at the resolution of the screen. */
function fit(canvas: HTMLCanvasElement, width: number, height: number): void {
  const [across, down] = [Math.round(width * devicePixelRatio), Math.round(height * devicePixelRatio)];
  if (canvas.width === across && canvas.height === down) return;
  [canvas.width, canvas.height] = [across, down];
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
}

/**
 * Starts a chart of rows on a canvas. It is drawn directly and not by the chart library, as it is redrawn with each
 * keystroke and consists only of marks and the numbers of the axis.
 */
export function openRows(canvas: HTMLCanvasElement): Drawing<RowsPicture> {
  const pen = canvas.getContext('2d');
  return {
    show: (picture) => {
      if (pen === null) return;
      fit(canvas, picture.width, picture.height);
      pen.setTransform(devicePixelRatio, 0, 0, devicePixelRatio, 0, 0);
      pen.clearRect(0, 0, picture.width, picture.height);
      // The image fills the plot, and rows have none.
      const tools = canvasTools(pen, { left: 0, top: 0, right: picture.width, bottom: picture.height });
      drawRows(rowsPlot(picture, tools), picture);
    },
    close: () => undefined,
  };
}
