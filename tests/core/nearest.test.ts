import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from '../../src/core/nearest';

describe('edits between words', () => {
  it.each<[a: string, b: string, edits: number]>([
    ['', '', 0],
    ['', 'abc', 3],
    ['abc', 'abc', 0],
    ['abc', 'abd', 1],
    ['abc', 'ac', 1],
    ['abc', 'abxc', 1],
    ['abc', 'acb', 1],
    ['transplnt_time', 'transplant_time', 1],
    ['kitten', 'sitting', 3],
    ['ca', 'abc', 3],
  ])('%j to %j: %d', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
    expect(editDistance(b, a)).toBe(edits);
  });
});

describe('the nearest known word', () => {
  it.each<[word: string, known: string[], near: string | undefined]>([
    ['transplnt_time', ['wage', 'transplant_time', 'transplant_rate'], 'transplant_time'],
    ['waeg', ['wage', 'water'], 'wage'],
    ['wag', ['wage'], 'wage'],
    ['x', ['y'], 'y'],
    ['x', ['yz'], undefined],
    ['price', ['boards', 'interval'], undefined],
    ['ab', ['ac', 'ad'], 'ac'],
    ['ab', [], undefined],
    ['wage', ['cave'], undefined],
    ['boards', ['hoarxs'], 'hoarxs'],
    ['boards', ['hoerxs'], undefined],
  ])('of %j among %j: %s', (word, known, near) => expect(nearest(word, known)).toBe(near));
});

it('a distance is the same whether it is cut short or not, as far as it is below the cut', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 9 });
  fc.assert(
    fc.property(word, word, fc.integer({ min: 1, max: 6 }), (a, b, enough) => {
      const [whole, cut] = [editDistance(a, b), editDistance(a, b, enough)];
      return whole < enough ? cut === whole : cut >= enough;
    }),
    { seed: 3, numRuns: 2000 },
  );
});

it('the nearest is what comparing with each word gives, whatever their letters', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'd', '_'), minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(word, fc.array(word, { maxLength: 8 }), (asked, known) => {
      const most = Math.max(1, Math.floor(asked.length / 3));
      const distances = known.map((one) => editDistance(asked, one));
      const least = Math.min(...distances);
      return nearest(asked, known) === (least <= most ? known[distances.indexOf(least)] : undefined);
    }),
    { seed: 4, numRuns: 2000 },
  );
});
