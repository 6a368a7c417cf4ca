import { describe, expect, it } from 'vitest';
import type { Grid } from '../../../src/study/grid';
import { heatPixels } from '../../../src/present/heat/pixels';

function pixels(values: readonly (readonly number[])[], width: number, height: number): number[][] {
  const grid: Grid<number> = { across: values[0]!.map((_, i) => i), down: values.map((_, j) => j), values };
  const seen: number[][] = Array.from({ length: height }, () => []);
  heatPixels(grid, width, height, (value, x, y) => {
    seen[y]![x] = value;
    return 0;
  });
  return seen;
}

describe('a grid as pixels', () => {
  it('has its first row at the bottom, and is straight between nodes', () => {
    expect(
      pixels(
        [
          [0, 4],
          [8, 12],
        ],
        2,
        2,
      ),
    ).toEqual([
      [7, 9],
      [3, 5],
    ]);
  });

  it('knows nothing between a known node and an unknown one', () => {
    expect(
      pixels(
        [
          [0, 4, NaN],
          [0, 4, 8],
        ],
        4,
        1,
      ),
    ).toEqual([[1, 3, NaN, NaN]]);
  });

  it('keeps the colours that it is painted with', () => {
    const grid: Grid<number> = {
      across: [0, 1],
      down: [0, 1],
      values: [
        [0, 1],
        [0, 1],
      ],
    };
    expect([...heatPixels(grid, 2, 1, (value) => (value < 0.5 ? 7 : 4_294_967_295))]).toEqual([7, 4_294_967_295]);
  });
});
