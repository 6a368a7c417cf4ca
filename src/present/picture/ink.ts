import type { Fill } from './pen';

/** Colours and type for drawing; CSS colours and pixels. */
export interface Ink {
  readonly text: string;
  readonly quiet: string;
  readonly hair: string;
  readonly family: string;
  readonly size: number;
}

/** The colours and type of a chart. */
export interface ChartInk extends Ink {
  readonly paper: string;
  readonly mark: string;
  readonly planA: string;
  readonly planB: string;
  readonly fault: string;
  /** The width of a text in this type, in pixels; 0 where nothing can measure it. */
  readonly measure: (text: string) => number;
  /** Slanted stripes of a colour on the paper; the colour itself where no pattern can be made. */
  readonly hatched: (colour: string) => Fill;
}

/** The font that a chart writes in. */
export function fontOf({ size, family }: Ink): string {
  return `${size}px ${family}`;
}
