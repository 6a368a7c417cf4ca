import { fontOf } from '../../../present/picture/ink';
import type { Drawing, Plot } from '../../../present/picture/plot';
import type { RowsPicture } from '../../../present/picture/rowsPicture';
import { ticksOf } from '../../../present/picture/ticks';
import { canvasTools } from './canvasPlot';

const mostTicks = 7;
/** Least distance between the numbers of the axis, in pixels. */
const apart = 14;

function plotOf(pen: CanvasRenderingContext2D, picture: RowsPicture): Plot {
  const {
    width,
    height,
    padding,
    x: { min, max },
    rows,
    foot,
  } = picture;
  const { left, top } = padding;
  const [right, bottom] = [width - padding.right, height - padding.bottom - foot];
  const area = { left, right, top, bottom };
  return {
    ...canvasTools(pen, area),
    ...area,
    width,
    height,
    x: (value) => left + ((value - min) / (max - min)) * (right - left),
    y: (row) => top + ((row + 0.5) / rows) * (bottom - top),
  };
}

interface Label {
  readonly text: string;
  /** Middle of the text, in pixels. */
  readonly x: number;
  /** Half the width of the text, in pixels. */
  readonly half: number;
}

/** The numbers of the axis, as many as fit beside one another. */
function labelsOf({ x: { min, max, tick }, ink }: RowsPicture, { left, right, x }: Plot): Label[] {
  for (let most = mostTicks; ; most -= 1) {
    const { step, values } = ticksOf(min, max, most);
    const labels = values.map((value) => {
      const text = tick(value, step);
      return { text, x: x(value), half: ink.measure(text) / 2 };
    });
    const widest = 2 * Math.max(...labels.map(({ half }) => half));
    if (most === 2 || widest + apart <= ((right - left) * step) / (max - min)) return labels;
  }
}

function drawAxis(plot: Plot, picture: RowsPicture): void {
  const { pen, bottom, left, right, width, height } = plot;
  const {
    ink,
    x: { title },
    padding,
  } = picture;
  pen.font = fontOf(ink);
  pen.textAlign = 'center';
  pen.textBaseline = 'top';
  pen.fillStyle = ink.quiet;
  for (const { text, x, half } of labelsOf(picture, plot)) {
    if (x - half >= 0 && x + half <= width) pen.fillText(text, x, bottom + 5);
  }
  pen.fillStyle = ink.text;
  pen.textBaseline = 'bottom';
  pen.fillText(title, (left + right) / 2, height - padding.bottom - 4);
}

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
      const plot = plotOf(pen, picture);
      picture.under(plot);
      drawAxis(plot, picture);
      picture.over(plot);
    },
    close: () => undefined,
  };
}
