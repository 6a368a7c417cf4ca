import type { Axis, Framed } from './plot';

/** A line through points of ascending x; NaN makes a gap. */
export interface DrawnLine {
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

/** Lines over two axes. */
export interface LinesPicture extends Framed {
  readonly y: Axis;
  readonly lines: readonly DrawnLine[];
}
