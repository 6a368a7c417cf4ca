import { describe, expect, test } from 'vitest';
import { finish, mapInSteps, within, type Steps } from '../../src/core/steps';

function* halves(): Steps<string> {
  yield 0.5;
  yield 1;
  return 'done';
}

function sharesOf(steps: Steps<unknown>): number[] {
  return [...steps];
}

describe('steps', () => {
  test('done at once give what they come to', () => {
    expect(finish(halves())).toBe('done');
  });

  test('laid between two shares keep what they come to', () => {
    expect(sharesOf(within(0.2, 0.6, halves()))).toEqual([0.4, 0.6]);
    expect(finish(within(0.2, 0.6, halves()))).toBe('done');
  });

  test.each([
    [0, []],
    [3, []],
    [4, [1]],
    [9, [4 / 9, 8 / 9]],
  ])('over %i items, four at a time, yield the shares that are done', (count, shares) => {
    const items = Array.from({ length: count }, (_, i) => i);
    const seen: number[] = [];
    const look = (item: number, index: number): number => {
      seen.push(item);
      return item + index;
    };
    expect(sharesOf(mapInSteps(items, look, 4))).toEqual(shares);
    expect(seen).toEqual(items);
    expect(finish(mapInSteps(items, look, 4))).toEqual(items.map((i) => 2 * i));
  });
});
