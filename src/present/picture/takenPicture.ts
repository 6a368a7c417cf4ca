import type { ChartInk } from './ink';
import type { LinesPicture } from './linesPicture';
import type { Pen } from './pen';
import type { RowsPicture } from './rowsPicture';

/** A picture that draws all of itself, its axes too. */
export interface WholePicture {
  readonly width: number;
  readonly height: number;
  readonly paint: (pen: Pen) => void;
}

/** An item of the key, with the sign that it explains. */
export interface KeyItem {
  readonly text: string;
  /** Width of the sign in pixels; 0 where there is none. */
  readonly room: number;
  /** Draws the sign from the left, around a height. */
  readonly sign?: (pen: Pen, left: number, middle: number) => void;
}

export type DrawnPicture = LinesPicture | RowsPicture | WholePicture;

/** Draws a picture in some colours and some width in pixels. */
export type Draw<Picture> = (ink: ChartInk, width: number) => Picture;

/** What a chart adds to itself where it is taken out. */
export interface TakenParts {
  readonly key: (ink: ChartInk) => readonly KeyItem[];
  /** The picture, where elements over the chart say a part of it on the page. */
  readonly draw?: Draw<DrawnPicture>;
}

/** A chart as it is taken out of the page, for drawing in any size and in other colours than the page's. */
export interface TakenPicture extends Required<TakenParts> {
  /** What is shown, with its unit. */
  readonly title: string;
  /** The finding. */
  readonly sentence: string;
}
