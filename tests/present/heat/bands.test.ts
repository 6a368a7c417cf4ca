import { describe, expect, it } from 'vitest';
import { bandAt, heatBands, listedBands, startOf, strengthOf, writtenEdges } from '../../../src/present/heat/bands';

describe('bands over results', () => {
  it.each<[claim: string, values: number[], level: number, edges: string]>([
    ['go in round steps from the level to either side', [-5800, 9817], 0, '-6000 … 10000 by 2000'],
    ['reach no further than the results', [10, 45], 0, '10 … 45 by 5'],
    ['lie below the level where the results do', [-45, -10], 0, '-45 … -10 by 5'],
    ['start from a level other than 0', [980, 1060], 1000, '980 … 1060 by 10'],
    ['are one where there is one result', [7, 7], 0, '0 … 10 by 10'],
    ['are one where the only result is at the level', [0], 0, '0 … 1 by 1'],
    ['are one where nothing can be computed', [NaN], 5, '5 … 6 by 1'],
  ])('%s', (_claim, values, level, edges) => {
    const bands = heatBands(values, level);
    expect(`${startOf(bands, bands.first)} … ${startOf(bands, bands.last + 1)} by ${bands.step}`).toBe(edges);
  });

  it('do not stretch for a few results beside a pole', () => {
    const values = [...Array.from({ length: 99 }, (_, k) => k), 1e9];
    expect(heatBands(values, 0)).toMatchObject({ step: 10, last: 9 });
  });

  it('count a result at the level as above it, and those beyond an end to the end', () => {
    const bands = { level: 0, step: 10, first: -2, last: 3 };
    expect([-1e9, -0.1, 0, 9.9, 10, 1e9].map((value) => bandAt(bands, value))).toEqual([-2, -1, 0, 0, 1, 3]);
  });

  it('are shaded the more strongly the further they are from the level, alike on both sides', () => {
    const bands = { level: 0, step: 10, first: -2, last: 3 };
    expect(listedBands(bands).map((band) => strengthOf(bands, band))).toEqual([0.5, 0.25, 0.25, 0.5, 0.75, 1]);
  });

  it('use all shades where the level is far off', () => {
    const bands = heatBands([100_010, 100_040], 0);
    const strengths = listedBands(bands).map((band) => strengthOf(bands, band));
    expect([strengths[0], strengths.at(-1)]).toEqual([1 / strengths.length, 1]);
  });

  it.each([
    ['both ends and the level between', -5, 5, [-5, 0, 6]],
    ['not an end right beside the level', -1, 8, [0, 9]],
    ['the ends alone where the level is not between', 2, 8, [2, 9]],
    ['nor where it is an end itself', 0, 8, [0, 9]],
  ])('are named in the key by %s', (_claim, first, last, edges) => {
    expect(writtenEdges({ level: 0, step: 1, first, last })).toEqual(edges);
  });
});
