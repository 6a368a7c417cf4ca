import { fontOf } from './ink';
import { measureIn } from './measure';
import type { Drawing, Framed, Plot } from './plot';
import { ticksOf, type Ticks } from './ticks';

/**
 * Rows below one another over one axis. It is drawn here and not by the chart library: it moves with each keystroke
 * beside the numbers, and there is nothing in it but marks and the numbers below them.
 */
export interface RowsPicture extends Framed {
  readonly rows: number;
  /** Room for the axis, in pixels. */
  readonly foot: number;
}

const mostTicks = 7;
/** Least room between the numbers of the axis, in pixels. */
const apart = 14;

function plotOf(pen: CanvasRenderingContext2D, picture: RowsPicture): Plot {
  const { width, height, padding, x: { min, max }, rows, foot } = picture;
  const { left, top } = padding;
  const [right, bottom] = [width - padding.right, height - padding.bottom - foot];
  return {
    pen, left, right, top, bottom, width, height,
    x: (value) => left + ((value - min) / (max - min)) * (right - left),
    y: (row) => top + ((row + 0.5) / rows) * (bottom - top),
  };
}

/** As many ticks as have room for their texts beside one another. */
function ticksIn({ x: { min, max, tick }, ink }: RowsPicture, { left, right }: Plot): Ticks {
  const measure = measureIn(ink);
  const fits = ({ step, values }: Ticks): boolean => {
    const widest = Math.max(...values.map((value) => measure(tick(value, step))));
    return values.length * (widest + apart) <= ((right - left) * step * values.length) / (max - min);
  };
  for (let most = mostTicks; most > 2; most -= 1) {
    const ticks = ticksOf(min, max, most);
    if (fits(ticks)) return ticks;
  }
  return ticksOf(min, max, 2);
}

function drawAxis(plot: Plot, picture: RowsPicture): void {
  const { pen, bottom, left, right, width, height, x } = plot;
  const { ink, x: axis } = picture;
  const { step, values } = ticksIn(picture, plot);
  pen.font = fontOf(ink);
  pen.textAlign = 'center';
  pen.textBaseline = 'top';
  pen.fillStyle = ink.quiet;
  for (const value of values) {
    const text = axis.tick(value, step);
    const half = measureIn(ink)(text) / 2;
    if (x(value) - half >= 0 && x(value) + half <= width) pen.fillText(text, x(value), bottom + 5);
  }
  pen.fillStyle = ink.text;
  pen.textBaseline = 'bottom';
  pen.fillText(axis.title, (left + right) / 2, height - picture.padding.bottom - 4);
}

/** Makes a canvas so many CSS pixels large, drawn as fine as the screen is. */
function fit(canvas: HTMLCanvasElement, width: number, height: number): void {
  const [across, down] = [Math.round(width * devicePixelRatio), Math.round(height * devicePixelRatio)];
  if (canvas.width === across && canvas.height === down) return;
  [canvas.width, canvas.height] = [across, down];
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
}

/** Starts a chart of rows on a canvas. */
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
