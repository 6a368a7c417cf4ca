import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ordering } from '../../../src/model/graph';
import { longestWays } from '../../../src/model/links/longestWays';
import { naiveLongest } from './naive';

const ways = (reads: readonly (readonly number[])[]): readonly (number | undefined)[] =>
  longestWays(reads, ordering(reads).order);

it.each([
  ['a cell that reads nothing stands at 0', [[]], [0]],
  ['of two ways the longer one counts', [[], [0], [0, 1]], [0, 1, 2]],
  ['whatever their order in the file', [[1, 2], [2], []], [2, 1, 0]],
  ['a circle has no longest way', [[1], [0]], [undefined, undefined]],
  ['nor has what hangs on one', [[0], [0], []], [undefined, undefined, 0]],
  ['but what a circle reads has', [[1, 2], [0], []], [undefined, undefined, 0]],
])('%s', (_claim, reads, expected) => {
  expect(ways(reads)).toEqual(expected);
});

it('is what walking every way finds, in any graph', () => {
  const graph = fc.array(fc.uniqueArray(fc.nat(7), { maxLength: 2 }), { minLength: 8, maxLength: 8 });
  fc.assert(
    fc.property(graph, (reads) => {
      const naive = reads.map((_, node) => naiveLongest(node, reads));
      expect(ways(reads).map((steps) => steps ?? Infinity)).toEqual(naive);
    }),
    { seed: 6, numRuns: 300 },
  );
});

it('of a chain of 10,000 cells is found', () => {
  const chain = Array.from({ length: 10_000 }, (_, node) => (node === 0 ? [] : [node - 1]));
  expect(ways(chain).at(-1)).toBe(9_999);
});
