import type { Grid } from '../../study/grid';

/** A colour as the canvas stores it: red in the lowest byte, then green, blue and 255. */
export type Pixel = number;

/** For each pixel of a row, the node before it and its share of the way to the next one. */
function placesAlong(nodes: number, pixels: number): { node: Uint16Array; share: Float64Array } {
  const node = new Uint16Array(pixels);
  const share = new Float64Array(pixels);
  for (let p = 0; p < pixels; p += 1) {
    const at = ((p + 0.5) / pixels) * (nodes - 1);
    node[p] = Math.min(Math.floor(at), Math.max(nodes - 2, 0));
    share[p] = at - node[p]!;
  }
  return { node, share };
}

/**
 * A grid as pixels, with its first row at the bottom. Between four nodes the result is interpolated linearly along both
 * inputs; it is NaN where one of them is.
 * @param paint the colour of a result at a pixel, which may also depend on the pixel's place
 */
export function heatPixels(
  { across, down, values }: Grid<number>,
  width: number,
  height: number,
  paint: (value: number, x: number, y: number) => Pixel,
): Uint32Array {
  const pixels = new Uint32Array(width * height);
  const [columns, rows] = [placesAlong(across.length, width), placesAlong(down.length, height)];
  for (let y = 0; y < height; y += 1) {
    const up = height - 1 - y;
    const [j, v] = [rows.node[up]!, rows.share[up]!];
    const [low, high] = [values[j]!, values[Math.min(j + 1, values.length - 1)]!];
    for (let x = 0; x < width; x += 1) {
      const [i, u] = [columns.node[x]!, columns.share[x]!];
      const next = Math.min(i + 1, across.length - 1);
      const below = low[i]! + u * (low[next]! - low[i]!);
      const above = high[i]! + u * (high[next]! - high[i]!);
      pixels[y * width + x] = paint(below + v * (above - below), x, y);
    }
  }
  return pixels;
}
