import { describe, expect, it } from 'vitest';
import { bestOf, flatStretch, type Way } from '../../src/study/best';
import type { Grid } from '../../src/study/grid';

function gridOf(values: readonly (readonly number[])[]): Grid<number> {
  return { across: values[0]!.map((_, i) => i), down: values.map((_, j) => j), values };
}

function said(values: readonly (readonly number[])[], way: Way, near = { i: 0, j: 0 }): string {
  const best = bestOf(gridOf(values), way, near);
  if (best === undefined) return 'none';
  return [`${best.value} at ${best.i},${best.j}`, ...best.ties.map(({ i, j }) => `${i},${j}`)].join(' or ');
}

describe('the best of a grid', () => {
  it.each<[claim: string, values: number[][], way: Way, found: string]>([
    [
      'is the highest',
      [
        [1, 2],
        [5, 3],
      ],
      'highest',
      '5 at 0,1',
    ],
    [
      'or the lowest',
      [
        [4, 2],
        [5, 3],
      ],
      'lowest',
      '2 at 1,0',
    ],
    [
      'also of losses',
      [
        [-4, -2],
        [-5, -3],
      ],
      'highest',
      '-2 at 1,0',
    ],
    [
      'passes over what cannot be computed',
      [
        [NaN, 2],
        [Infinity, -Infinity],
      ],
      'highest',
      '2 at 1,0',
    ],
    [
      'names all that are just as good',
      [
        [7, 2, 7],
        [7, 3, 1],
      ],
      'highest',
      '7 at 0,0 or 2,0 or 0,1',
    ],
    ['takes float64’s rounding for nothing', [[0.1 + 0.2, 0.3]], 'highest', '0.30000000000000004 at 0,0 or 1,0'],
    ['does not take a small difference for nothing', [[1, 1.00001]], 'highest', '1.00001 at 1,0'],
    ['is none where nothing can be computed', [[NaN, NaN]], 'highest', 'none'],
  ])('%s', (_claim, values, way, found) => expect(said(values, way)).toBe(found));

  it('is the one nearest to today of several that are equally good', () => {
    expect(
      said(
        [
          [7, 2, 7],
          [7, 3, 1],
        ],
        'highest',
        { i: 2, j: 1 },
      ),
    ).toBe('7 at 2,0 or 0,0 or 0,1');
  });
});

describe('how flat a line is around its best', () => {
  it.each<[claim: string, values: number[], at: number, way: Way, stretch: [number, number]]>([
    ['as far as it stays within a share', [90, 98.5, 99, 100, 98, 97.9], 3, 'highest', [1, 4]],
    ['to the ends where all are near', [99, 100, 99], 1, 'highest', [0, 2]],
    ['only the best itself where it is steep', [50, 100, 50], 1, 'highest', [1, 1]],
    ['upwards where the lowest is best', [105, 101, 100, 102.5], 2, 'lowest', [1, 2]],
    ['with losses', [-103, -101, -100, -102], 2, 'highest', [1, 3]],
    ['no further than a gap', [100, NaN, 100, 99], 2, 'highest', [2, 3]],
  ])('%s', (_claim, values, at, way, stretch) => expect(flatStretch(values, at, way, 0.02)).toEqual(stretch));
});
