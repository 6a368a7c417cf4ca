import { apart } from './apart';
import { axisLabels } from './axisLabels';
import { fontOf } from './ink';
import type { Plot } from './plot';
import type { RowsPicture } from './rowsPicture';

/** Where a chart of rows draws. */
export function rowsPlot(picture: RowsPicture, tools: Pick<Plot, 'image' | 'pen' | 'scale'>): Plot {
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
  return {
    ...tools,
    left,
    right,
    top,
    bottom,
    width,
    height,
    x: (value) => left + ((value - min) / (max - min)) * (right - left),
    y: (row) => top + ((row + 0.5) / rows) * (bottom - top),
  };
}

function drawAxis(plot: Plot, picture: RowsPicture): void {
  const { pen, bottom, left, right, width, height } = plot;
  const { ink, x, padding } = picture;
  pen.font = fontOf(ink);
  pen.textAlign = 'center';
  pen.textBaseline = 'top';
  pen.fillStyle = ink.quiet;
  for (const { text, x: middle, half } of axisLabels(x, ink, plot)) {
    if (middle - half >= 0 && middle + half <= width) pen.fillText(text, middle, bottom + 5);
  }
  pen.fillStyle = ink.text;
  pen.textBaseline = 'bottom';
  pen.fillText(apart(x.title), (left + right) / 2, height - padding.bottom - 4);
}

/** Draws all of a chart of rows. */
export function drawRows(plot: Plot, picture: RowsPicture): void {
  picture.under(plot);
  drawAxis(plot, picture);
  picture.over(plot);
}
