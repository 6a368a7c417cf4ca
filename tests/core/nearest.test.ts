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
