import type { Pen } from './pen';

/** A rectangle in pixels. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What a picture is drawn on that leaves the page. */
export interface Paper {
  readonly pen: Pen;
  /** Draws with all places moved to the right and down. */
  readonly moved: (right: number, down: number, draw: () => void) => void;
  /** Draws what lies in an area, and nothing of what lies outside. */
  readonly within: (area: Area, draw: () => void) => void;
  /** Fills an area with an image; pixels as `Plot` has them. */
  readonly image: (pixels: Uint32Array, width: number, height: number, area: Area) => void;
}
