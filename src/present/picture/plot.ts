import type { ChartInk } from './ink';
import type { Pen } from './pen';

/** A scale of numbers from the left to the right, or from the bottom to the top. */
export interface Axis {
  readonly min: number;
  readonly max: number;
  /** The text of a tick; the ticks stand `step` apart. */
  readonly tick: (value: number, step: number) => string;
  /** Blank: none. */
  readonly title: string;
}

/** The area in which a chart draws, and the pixels of its numbers. */
export interface Plot {
  readonly pen: Pen;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Of the whole canvas. */
  readonly width: number;
  readonly height: number;
  readonly x: (value: number) => number;
  /** Of a number on the axis, or of a row's middle. */
  readonly y: (value: number) => number;
  /** Device pixels to a pixel of the page. */
  readonly scale: number;
  /**
   * Fills the plot with an image, row by row from the top; the bytes of a pixel are red, green, blue and 255, lowest
   * first.
   */
  readonly image: (pixels: Uint32Array, width: number, height: number) => void;
}

/** What the picture of any chart holds. */
export interface Framed {
  /** Of the canvas, in pixels. */
  readonly width: number;
  readonly height: number;
  readonly ink: ChartInk;
  readonly padding: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly x: Axis;
  /** Draws marks below the lines and the axis. */
  under(plot: Plot): void;
  /** Draws marks on top of them. */
  over(plot: Plot): void;
}

/** A chart on a canvas. */
export interface Drawing<Picture> {
  /** Draws a picture at once. */
  show(picture: Picture): void;
  close(): void;
}
