import fc from 'fast-check';
import { expect, it } from 'vitest';
import { distances } from '../../../src/model/links/distances';
import { naiveSteps } from './naive';

it('gives the steps of the shortest way, the nearest first', () => {
  //      0 → 1 → 2 → 3, and 0 → 3
  expect([...distances(0, [[1, 3], [2], [3], []])]).toEqual([
    [0, 0],
    [1, 1],
    [3, 1],
    [2, 2],
  ]);
});

it('stands at 0 itself, also where a circle leads back', () => {
  expect([...distances(0, [[1], [0]])]).toEqual([
    [0, 0],
    [1, 1],
  ]);
});

it('finds what repeated looking finds, in any graph', () => {
  const graph = fc.array(fc.uniqueArray(fc.nat(11), { maxLength: 3 }), { minLength: 12, maxLength: 12 });
  fc.assert(
    fc.property(graph, fc.nat(11), (next, from) => {
      expect(new Map([...distances(from, next)].sort(([a], [b]) => a - b))).toEqual(naiveSteps(from, next));
    }),
    { seed: 5, numRuns: 300 },
  );
});
