import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binsOver, countIn, cumulative } from '../../src/study/histogram';

describe('bins', () => {
  it.each([
    ['round widths', [0, 100, 0, 10], { from: -10, width: 10, count: 11 }],
    ['an edge at the target', [3, 97, 42, 10], { from: 2, width: 10, count: 10 }],
    ['a target outside', [103, 197, 0, 5], { from: 100, width: 20, count: 5 }],
    ['small numbers', [0.001, 0.0019, 0, 10], { from: 0.0009, width: 0.0001, count: 10 }],
    ['one result', [5, 5, 0, 10], { from: 0, width: 5, count: 1 }],
    ['one result at the target', [5, 5, 5, 10], { from: 4, width: 1, count: 1 }],
  ] as const)('%s', (_claim, [low, high, target, most], bins) => {
    const found = binsOver(low, high, target, most);
    expect(found).toEqual({ ...bins, from: expect.closeTo(bins.from, 12) as unknown });
  });

  it('hold the whole span, in few more than asked for', () => {
    const size = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        size,
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (low, span, target) => {
          const { from, width, count } = binsOver(low, low + span, target, 50);
          const slack = 1e-9 * (1e6 + span);
          expect([from <= low + slack, from + count * width >= low + span - slack, count <= 53]).toEqual([
            true,
            true,
            true,
          ]);
        },
      ),
      { seed: 1 },
    );
  });
});

describe('counts', () => {
  const bins = { from: 0, width: 1, count: 3 };

  it('count a result on an edge below it, and those outside at the ends', () => {
    expect([...countIn(bins, [0, 0.5, 1, 1.5, 2, 3, 9, -4])]).toEqual([4, 2, 2]);
  });

  it('add up to all results, and their shares to 1', () => {
    const counts = countIn(bins, [0.1, 1.2, 1.3, 2.5]);
    expect([...cumulative(counts)]).toEqual([0.25, 0.75, 1]);
  });

  it('a result at the target is not above it', () => {
    const found = binsOver(-3, 3, 0, 6);
    const counts = countIn(found, [-1, 0, 0, 1]);
    expect([...cumulative(counts)][Math.round((0 - found.from) / found.width) - 1]).toBe(0.75);
  });
});
