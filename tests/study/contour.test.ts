import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contour, type Path } from '../../src/study/contour';
import type { Grid } from '../../src/study/grid';

function gridOf(at: (x: number, y: number) => number, size: number, span: number): Grid<number> {
  const ends = Array.from({ length: size }, (_, k) => -span + (2 * span * k) / (size - 1));
  return { across: ends, down: ends, values: ends.map((y) => ends.map((x) => at(x, y))) };
}

/** Rows from the lowest up, written from the highest down as they are seen. */
function written(rows: string): Grid<number> {
  const values = rows
    .trim()
    .split('\n')
    .reverse()
    .map((row) => row.trim().split(/\s+/).map(Number));
  const upTo = (count: number): number[] => Array.from({ length: count }, (_, k) => k);
  return { across: upTo(values[0]!.length), down: upTo(values.length), values };
}

/** Lines as their places, from whichever end comes first. */
function told(paths: readonly Path[]): string[] {
  return paths.map((path) => {
    const places = path.map(({ x, y }) => `${x},${y}`);
    return (places[0]! <= places.at(-1)! ? places : places.reverse()).join(' ');
  });
}

describe('a contour', () => {
  it('is straight where the result is', () => {
    const [only, ...more] = contour(
      gridOf((x, y) => 2 * x + y, 5, 2),
      1,
    );
    expect(more).toEqual([]);
    for (const { x, y } of only!) expect(2 * x + y).toBeCloseTo(1, 12);
  });

  it('closes around a top, as long as the circle that it is', () => {
    const [only, ...more] = contour(
      gridOf((x, y) => x * x + y * y, 201, 2),
      1,
    );
    expect(more).toEqual([]);
    expect(only!.at(-1)).toEqual(only![0]);
    const length = only!.slice(1).reduce((sum, { x, y }, k) => sum + Math.hypot(x - only![k]!.x, y - only![k]!.y), 0);
    expect(length).toBeCloseTo(2 * Math.PI, 2);
  });

  it.each([
    ['runs half-way across a step', '0 1\n0 1', ['0.5,0 0.5,1']],
    ['lies on a node that is at the level', '0 0.5\n0 1', ['0.5,0 1,1']],
    ['does not enter a square with an unknown corner', 'NaN 1 1\n0 0 0', ['1,0.5 2,0.5']],
    ['nor one with an endless one', 'Infinity 1 1\n0 0 0', ['1,0.5 2,0.5']],
    [
      'is two lines that part the low corners of a saddle with a high middle',
      '-1 3\n3 -1',
      ['0.625,0 1,0.375', '0,0.625 0.375,1'],
    ],
    [
      'is two lines that part the high corners of a saddle with a low middle',
      '-1 1\n1 -1',
      ['0,0.25 0.25,0', '0.75,1 1,0.75'],
    ],
    ['is none where all is above', '1 2\n3 4', []],
    ['is none where all is below', '0 0\n0.2 0.1', []],
  ])('%s', (_claim, rows, paths) => {
    expect(told(contour(written(rows), 0.5)).sort()).toEqual([...paths].sort());
  });

  it('parts what is above from what is below: each crossed edge is passed once', () => {
    const value = fc.integer({ min: -3, max: 3 });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value, value, value), { minLength: 2, maxLength: 6 }), (values) => {
        const grid: Grid<number> = { across: [0, 1, 2, 3], down: values.map((_, j) => j), values };
        const isAbove = (i: number, j: number): boolean => (values[j]?.[i] ?? 0) >= 0.5;
        const pairs = values.flatMap((row, j) =>
          row.flatMap((_, i) => [
            ...(i < 3 ? [isAbove(i, j) !== isAbove(i + 1, j)] : []),
            ...(j + 1 < values.length ? [isAbove(i, j) !== isAbove(i, j + 1)] : []),
          ]),
        );
        const paths = contour(grid, 0.5);
        const isClosed = (path: Path): boolean =>
          path.length > 2 && told([[path[0]!]])[0] === told([[path.at(-1)!]])[0];
        const passed = paths.reduce((sum, path) => sum + path.length - (isClosed(path) ? 1 : 0), 0);
        expect(passed).toBe(pairs.filter(Boolean).length);
      }),
    );
  });
});
