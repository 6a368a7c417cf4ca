import { describe, expect, it } from 'vitest';
import { histogram } from '../../src/study/histogram';

const evenly = Float64Array.from({ length: 10_000 }, (_, i) => -50 + i / 100);

describe('the bins of a histogram', () => {
  it.each([
    [4, 0.1],
    [60, 1],
    [66, 2],
    [7800, 200],
  ])('of results from 0 to %d are %d wide, the round step that makes no more than 60 or so', (high, width) => {
    const ends = Float64Array.from({ length: 1000 }, (_, i) => (i < 500 ? 0 : high));
    expect(histogram([ends]).width).toBe(width);
  });
  it('have edges at multiples of their width, 0 among them', () => {
    const { from, width, shares } = histogram([evenly]);
    expect(width).toBe(2);
    expect(from / width).toBe(Math.round(from / width));
    expect(from).toBe(-50);
    expect(shares[0]).toHaveLength(50);
  });
  it('hold equal shares of evenly spread results', () => {
    const [shares] = histogram([evenly]).shares;
    for (const share of shares!) expect(share).toBeCloseTo(0.02, 3);
  });
  it('are common to two sets and cover both', () => {
    const { from, width, shares } = histogram([evenly, evenly.map((x) => x + 100)]);
    expect(from).toBeLessThanOrEqual(-49);
    expect(from + width * shares[0]!.length).toBeGreaterThanOrEqual(149);
    expect(shares[0]!.reduce((a, b) => a + b)).toBeCloseTo(1, 1);
    expect(shares[1]!.reduce((a, b) => a + b)).toBeCloseTo(1, 1);
  });
  it('are one where all results are the same', () => {
    const { shares } = histogram([new Float64Array(10).fill(7)]);
    expect(shares[0]!.length).toBe(1);
    expect(shares[0]![0]).toBeCloseTo(1);
    expect(histogram([new Float64Array(3)]).shares[0]).toHaveLength(1);
  });
  it('count a result on an edge above it, whatever rounding did to the edge, and leave out the farthest', () => {
    const tenths = Float64Array.from({ length: 61 }, (_, i) => i * 0.1);
    const { width, shares } = histogram([tenths]);
    expect(width).toBe(0.1);
    expect(shares[0]).toEqual(new Array(60).fill(expect.closeTo(1 / 61, 9)));
  });
  it('do not stretch for a few far draws', () => {
    const { width } = histogram([Float64Array.from([...evenly, 1e9])]);
    expect(width).toBe(2);
  });
});
