import { apart } from './apart';
import type { Fill, Pen } from './pen';
import type { Plot } from './plot';

/** How a line of a mark is drawn. */
export interface Stroke {
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

function stroke(pen: Pen, { colour, width, dash }: Stroke): void {
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.setLineDash([...dash]);
  pen.stroke();
  pen.setLineDash([]);
}

/** Draws a vertical line over the plot's height, `above` pixels longer at the top. */
export function upright({ pen, top, bottom, x }: Plot, value: number, look: Stroke, above = 0): void {
  const at = Math.round(x(value)) + 0.5;
  pen.beginPath();
  pen.moveTo(at, top - above);
  pen.lineTo(at, bottom);
  stroke(pen, look);
}

/** How a bar is drawn. */
export interface BarStyle {
  readonly fill: Fill;
  readonly edge: string;
  readonly thickness: number;
}

/** Draws a horizontal bar between two values, centred on a height in pixels; nothing where an end is not finite. */
export function bar({ pen, x }: Plot, from: number, to: number, middle: number, look: BarStyle): void {
  const [start, end] = [Math.min(x(from), x(to)), Math.max(x(from), x(to))];
  if (Number.isNaN(end - start)) return;
  pen.fillStyle = look.fill;
  pen.strokeStyle = look.edge;
  pen.lineWidth = 1;
  const [width, height] = [Math.max(0, end - start - 1), look.thickness - 1];
  const box = [start + 0.5, middle - height / 2, width, height] as const;
  pen.fillRect(...box);
  pen.strokeRect(...box);
}

/** Draws a horizontal line over the plot's width; nothing for a value outside the plot. */
export function level({ pen, left, right, top, bottom, y }: Plot, value: number, look: Stroke): void {
  const at = Math.round(y(value)) + 0.5;
  if (at < top || at > bottom + 1) return;
  pen.beginPath();
  pen.moveTo(left, at);
  pen.lineTo(right, at);
  stroke(pen, look);
}

/** Draws a ring on the paper's colour; with `fill` a disc. */
export function ring(
  { pen, x, y }: Plot,
  at: { x: number; y: number },
  look: Stroke,
  ground: string,
  radius: number,
): void {
  pen.beginPath();
  pen.arc(x(at.x), y(at.y), radius, 0, 2 * Math.PI);
  pen.fillStyle = ground;
  pen.fill();
  stroke(pen, look);
}

/** Writes a text with an outline in the paper's colour, so that lines behind it do not cross its letters. */
export function written(
  pen: Pen,
  text: string,
  at: { x: number; y: number; align: Pen['textAlign']; colour: string; ground: string },
): void {
  pen.textAlign = at.align;
  pen.textBaseline = 'middle';
  pen.lineJoin = 'round';
  pen.lineWidth = 4;
  pen.strokeStyle = at.ground;
  pen.strokeText(text, at.x, at.y);
  pen.fillStyle = at.colour;
  pen.fillText(apart(text), at.x, at.y);
}
