import type { Framed } from './plot';

/** Rows below one another over one axis. */
export interface RowsPicture extends Framed {
  readonly rows: number;
  /** Room for the axis, in pixels. */
  readonly foot: number;
}
