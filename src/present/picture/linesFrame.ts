import { apart } from './apart';
import { axisLabels, type AxisLabel } from './axisLabels';
import { fontOf } from './ink';
import type { DrawnLine, LinesPicture } from './linesPicture';
import type { Area, Paper } from './paper';
import type { Pen } from './pen';
import type { Plot } from './plot';
import { ticksOf } from './ticks';

/** Pixels between the plot and the numbers beside it. */
const gap = 8;
const mostUp = 7;

interface UpLabel {
  readonly text: string;
  readonly value: number;
}

interface Frame {
  readonly area: Area;
  readonly x: Plot['x'];
  readonly y: Plot['y'];
  readonly across: readonly AxisLabel[];
  readonly up: readonly UpLabel[];
}

function frameOf({ ink, padding, width, height, x, y }: LinesPicture): Frame {
  const ticks = ticksOf(y.min, y.max, mostUp);
  const up = ticks.values.map((value) => ({ value, text: y.tick(value, ticks.step) }));
  const widest = Math.max(0, ...up.map(({ text }) => ink.measure(text)));
  const foot = ink.size + gap + (x.title === '' ? 0 : ink.size + gap);
  const area = {
    left: padding.left + widest + gap,
    right: width - padding.right,
    top: padding.top + ink.size / 2,
    bottom: height - padding.bottom - foot,
  };
  const toX: Plot['x'] = (value) => area.left + ((value - x.min) / (x.max - x.min)) * (area.right - area.left);
  const toY: Plot['y'] = (value) => area.bottom - ((value - y.min) / (y.max - y.min)) * (area.bottom - area.top);
  return { area, x: toX, y: toY, up, across: axisLabels(x, ink, { ...area, x: toX }) };
}

function rule(pen: Pen, from: readonly [number, number], to: readonly [number, number]): void {
  pen.beginPath();
  pen.moveTo(...from);
  pen.lineTo(...to);
  pen.stroke();
}

function drawGrid(pen: Pen, { area, across, up, y }: Frame, { ink }: LinesPicture): void {
  pen.strokeStyle = ink.hair;
  pen.lineWidth = 1;
  for (const { x } of across) rule(pen, [x, area.top], [x, area.bottom]);
  for (const { value } of up) rule(pen, [area.left, y(value)], [area.right, y(value)]);
}

function drawAxes(pen: Pen, { area, across, up, y }: Frame, { ink, x, width, height, padding }: LinesPicture): void {
  pen.font = fontOf(ink);
  pen.fillStyle = ink.quiet;
  pen.textAlign = 'center';
  pen.textBaseline = 'top';
  for (const { text, x: middle, half } of across) {
    pen.fillText(text, Math.min(Math.max(middle, half), width - half), area.bottom + gap / 2);
  }
  pen.textAlign = 'right';
  pen.textBaseline = 'middle';
  for (const { text, value } of up) pen.fillText(text, area.left - gap, y(value));
  pen.fillStyle = ink.text;
  pen.textAlign = 'center';
  pen.textBaseline = 'bottom';
  if (x.title !== '') pen.fillText(apart(x.title), (area.left + area.right) / 2, height - padding.bottom);
}

function drawLine(pen: Pen, { points, colour, width, dash }: DrawnLine, { x, y }: Frame): void {
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.lineJoin = 'round';
  pen.setLineDash([...dash]);
  pen.beginPath();
  let isOn = false;
  for (const point of points) {
    const known = Number.isFinite(point.y);
    if (known && isOn) pen.lineTo(x(point.x), y(point.y));
    else if (known) pen.moveTo(x(point.x), y(point.y));
    isOn = known;
  }
  pen.stroke();
  pen.setLineDash([]);
}

/** Draws all of a chart of lines, with its axes, on paper. */
export function drawLines(paper: Paper, picture: LinesPicture): void {
  const { pen } = paper;
  const frame = frameOf(picture);
  const { area } = frame;
  const plot: Plot = {
    ...area,
    pen,
    width: picture.width,
    height: picture.height,
    x: frame.x,
    y: frame.y,
    scale: 2,
    image: (pixels, width, height) => paper.image(pixels, width, height, area),
  };
  drawGrid(pen, frame, picture);
  picture.under(plot);
  paper.within(area, () => {
    for (const line of picture.lines) drawLine(pen, line, frame);
  });
  drawAxes(pen, frame, picture);
  picture.over(plot);
}
