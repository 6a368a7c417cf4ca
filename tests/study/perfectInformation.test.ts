import { describe, expect, it } from 'vitest';
import { meanWorth, PerfectInformation } from '../../src/study/perfectInformation';

function worthOf(...options: number[][]): { value: number; error: number; best: number } {
  const all = new PerfectInformation(options.length);
  all.add(
    options.map((option) => Float64Array.from(option)),
    options[0]!.length,
  );
  return { ...all.worth(), best: all.best() };
}

describe('knowing everything', () => {
  it.each<[claim: string, options: number[][], value: number, best: number]>([
    [
      'is worth what the better choice would bring',
      [
        [0, 0],
        [3, -1],
      ],
      0.5,
      1,
    ],
    [
      'is worth nothing where one option is always best',
      [
        [0, 0],
        [3, 1],
      ],
      0,
      1,
    ],
    [
      'is worth nothing where options are equal',
      [
        [2, 1],
        [2, 1],
      ],
      0,
      0,
    ],
    ['is worth nothing with one option', [[2, -1]], 0, 0],
    [
      'takes the best of three',
      [
        [0, 0, 0],
        [3, -1, -1],
        [-3, 2, -1],
      ],
      5 / 3 - 1 / 3,
      1,
    ],
  ])('%s', (_claim, options, value, best) => {
    const found = worthOf(...options);
    expect(found.value).toBeCloseTo(value, 15);
    expect(found.best).toBe(best);
  });

  it('leaves out draws in which an option is not known', () => {
    expect(worthOf([0, 0, 0], [3, NaN, -1]).value).toBeCloseTo(0.5, 15);
  });

  it('is not known without draws', () => expect(worthOf([], []).value).toBeNaN());

  it('has the standard error of a mean', () => {
    const { value, error } = worthOf([0, 0, 0, 0], [3, -1, 3, -1]);
    expect([value, error]).toEqual([0.5, 0.25]);
  });
});

it('a mean from sums', () => expect(meanWorth(12, 76, 3)).toEqual({ value: 4, error: Math.sqrt((76 / 3 - 16) / 3) }));
